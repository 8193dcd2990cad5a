# Latest standings, by place: curl alone; the table is one line a category and variant.
HERE=${HERE:-http://127.0.0.1:3000}
curl -sf "$HERE/v1/results.csv" | head -n 6
