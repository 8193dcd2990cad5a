# An editor adds a line with what its label claims and a spool of it, gives the spool out, and looks at the season.
. ./sign-in.sh
sign_in editor@northquay.example north-quay-editor editor
ask "$HERE/v1/catalogue/makers" --json '{"slug":"quaymade","name":"Quaymade"}' > maker.json
ask "$HERE/v1/catalogue/lines" --json '{"slug":"quaymade-8","maker":"quaymade","name":"Quaymade 8","material":"UHMWPE","construction":"braided","carriers":8,"densityGPerCm3":"0.97"}' > line.json
ask "$HERE/v1/catalogue/variants" --json '{"slug":"quaymade-8-pe-1-2","line":"quaymade-8","size":"PE 1.2","colour":"grey"}' > variant.json
ask "$HERE/v1/catalogue/variants/quaymade-8-pe-1-2/claims" --json '{"quantity":"breakingForce","basis":"average","printed":{"text":"20","unit":"lbf"},"seenOn":"2026-10-01","source":"label"}' > claim.json
CODE=$(ask "$HERE/v1/catalogue/spools" --json '{"variant":"quaymade-8-pe-1-2","source":"bought","obtainedOn":"2026-10-01","place":"A shop by the harbour","lot":null,"lengthM":"150"}' | field blindCode)

ask "$HERE/v1/editions/2027/board" > board.json                     # what is missing, entry by entry
ask -X POST "$HERE/v1/editions/2027/previews" > preview.json        # the standings as they would be
echo "spool $CODE; $(field 'standsInTheWay.length' < board.json) things stand in the way of closing"
