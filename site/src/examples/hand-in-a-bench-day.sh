# A bench day of a tester: a control pull, then a file that is looked at and handed in.
# EMAIL and PASSWORD are those of your account. Needs curl 7.82 and Node.
HERE=${HERE:-http://127.0.0.1:3000}
field() { node -pe "JSON.parse(require('fs').readFileSync(0)).$1"; }
CSRF=$(curl -sf -c cookies "$HERE/v1/sessions" --json "{\"email\":\"$EMAIL\",\"password\":\"$PASSWORD\"}" | field csrfToken)
AUTH="Authorization: Bearer $(curl -sf -b cookies -H "X-CSRF-Token: $CSRF" "$HERE/v1/tokens" \
  --json '{"name":"bench day","scopes":["tester"],"expiresInDays":7}' | field token)"

# A tester knows a spool by its blind code alone; here one of those that you handed in before.
SPOOL=${SPOOL:-$(curl -sf -H "$AUTH" "$HERE/v1/submissions?edition=2027&limit=1" | field 'items[0].spool')}
DAY=$(date -u +%F)

# The control line says first whether the rig is in control.
curl -s -H "$AUTH" "$HERE/v1/control-pulls" --json "{\"controlLine\":\"C2\",\"instrument\":\"R1\",\"method\":\"straight-pull\",
  \"benchDay\":\"$DAY\",\"readings\":[{\"text\":\"83.1\",\"unit\":\"N\"},{\"text\":\"82.6\",\"unit\":\"N\"},{\"text\":\"83.4\",\"unit\":\"N\"}]}" > pull.json

cat > bench-day.csv <<CSV
edition,spool,method,method version,bench day,instruments,temperature [°C],humidity,specimen,invalid reason,force [lbf],time to break [s]
2027,$SPOOL,straight-pull,1,$DAY,R1,20.5,55,1,,36.52,18.2
2027,$SPOOL,straight-pull,1,$DAY,R1,20.5,55,2,,36.10,17.9
2027,$SPOOL,straight-pull,1,$DAY,R1,20.5,55,3,brokeAtGrip,31.44,15.0
2027,$SPOOL,straight-pull,1,$DAY,R1,20.5,55,4,,37.05,18.8
2027,$SPOOL,straight-pull,1,$DAY,R1,20.5,55,5,,36.77,18.1
2027,$SPOOL,straight-pull,1,$DAY,R1,20.5,55,6,,36.31,18.4
2027,$SPOOL,straight-pull,1,$DAY,R1,20.5,55,7,,35.88,17.6
2027,$SPOOL,straight-pull,1,$DAY,R1,20.5,55,8,,37.41,19.0
CSV

# Figures and findings; stores nothing.
curl -sf -H "$AUTH" -H 'Content-Type: text/csv' --data-binary @bench-day.csv "$HERE/v1/submissions/preview" > preview.json
# For the record; with the same key it is handed in once, however often the line drops.
curl -sf -H "$AUTH" -H 'Content-Type: text/csv' -H "Idempotency-Key: bench-day-$(cksum < bench-day.csv | tr -d ' ')" \
  --data-binary @bench-day.csv "$HERE/v1/submissions" > handed-in.json
REFERENCE=$(field 'submissions[0].reference' < handed-in.json)

# The record of a logger goes to its submission before the review.
{ echo 'Time [s],Force [N]'; seq 0 36 | awk '{ print $1 / 2 "," $1 * 4.51 }'; } > pull-1.csv
curl -sf -H "$AUTH" -H 'Content-Type: text/csv' -H 'If-Match: "1"' --data-binary @pull-1.csv \
  "$HERE/v1/submissions/$REFERENCE/traces?specimen=1" > trace.json
echo "$REFERENCE $(curl -sf -H "$AUTH" "$HERE/v1/submissions/$REFERENCE" | field state)"
