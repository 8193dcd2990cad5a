# An editor puts a line on record, from its maker to the code on the spool, and looks at what an edition lacks.
# EMAIL and PASSWORD are those of your account. Needs curl 7.82 and Node.
HERE=${HERE:-http://127.0.0.1:3000}
field() { node -pe "JSON.parse(require('fs').readFileSync(0)).$1"; }
CSRF=$(curl -sf -c cookies "$HERE/v1/sessions" --json "{\"email\":\"$EMAIL\",\"password\":\"$PASSWORD\"}" | field csrfToken)
AUTH="Authorization: Bearer $(curl -sf -b cookies -H "X-CSRF-Token: $CSRF" "$HERE/v1/tokens" \
  --json '{"name":"catalogue","scopes":["editor"],"expiresInDays":7}' | field token)"
add() { curl -sf -H "$AUTH" "$HERE/v1/catalogue/$1" --json "$2"; }

add makers '{"slug":"quaymade","name":"Quaymade"}' > maker.json
add lines '{"slug":"quaymade-8","maker":"quaymade","name":"Quaymade 8","material":"UHMWPE","construction":"braided",
  "carriers":8,"densityGPerCm3":"0.97"}' > line.json
add variants '{"slug":"quaymade-8-pe-1-2","line":"quaymade-8","size":"PE 1.2","colour":"grey"}' > variant.json
add variants/quaymade-8-pe-1-2/claims '{"quantity":"breakingForce","basis":"average","printed":{"text":"20","unit":"lbf"},
  "seenOn":"2026-10-01","source":"label"}' > claim.json
CODE=$(add spools '{"variant":"quaymade-8-pe-1-2","source":"bought","obtainedOn":"2026-10-01","place":"A shop by the harbour",
  "lot":null,"lengthM":"150"}' | field blindCode)

# What each entry lacks, what stands in the way of closing, and the standings as they would be.
curl -sf -H "$AUTH" "$HERE/v1/editions/2027/board" > board.json
curl -sf -H "$AUTH" -X POST "$HERE/v1/editions/2027/previews" > preview.json
echo "$CODE $(field 'entries.length' < board.json) entries, $(field 'standsInTheWay.length' < board.json) in the way"
