# Watch for errata: ask from the last number that you have; nothing is missed and nothing comes twice.
HERE=${HERE:-http://127.0.0.1:3000}
LAST=$(cat last-number 2>/dev/null || echo 0)
curl -sf "$HERE/v1/changes?after=$LAST&limit=1000" > changes.json
grep -o '"kind":"erratum.published"' changes.json | wc -l
grep -o '"lastNumber":[0-9]*' changes.json | cut -d: -f2 > last-number
