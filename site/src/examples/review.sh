# A reviewer takes the oldest submission that waits, answers what is held, and accepts it.
. ./sign-in.sh
sign_in reviewer-1@northquay.example north-quay-reviewer-1 reviewer
ask "$HERE/v1/review-queue?limit=1" > waiting.json # figures, findings, every specimen
REFERENCE=$(field 'items[0].reference' < waiting.json)
VERSION=$(field 'items[0].version' < waiting.json)
ANSWERS=$(field "items[0].findings.filter(f => f.severity === 'held').map(f => JSON.stringify({finding: f.id, words: 'Looked at; the readings stand.'})).join()" < waiting.json)
STATE=$(ask -H "If-Match: \"$VERSION\"" "$HERE/v1/submissions/$REFERENCE/reviews" --json "{\"decision\":\"accepted\",\"resolutions\":[$ANSWERS]}" | field state)
echo "$REFERENCE is $STATE"
