# Keep as sign-in.sh. sign_in <address> <password> <scope>: a session, by it a token for programs, kept in $AUTH.
set -e
HERE=${HERE:-http://127.0.0.1:3000}
field() { node -pe "JSON.parse(require('fs').readFileSync(0)).$1"; }
sign_in() {
  CSRF=$(curl -sS --fail-with-body -c cookies "$HERE/v1/sessions" --json "{\"email\":\"$1\",\"password\":\"$2\"}" | field csrfToken)
  AUTH="Authorization: Bearer $(curl -sS --fail-with-body -b cookies -H "X-CSRF-Token: $CSRF" "$HERE/v1/tokens" \
    --json "{\"name\":\"Worked example\",\"scopes\":[\"$3\"],\"expiresInDays\":1}" | field token)"
}
ask() { curl -sS --fail-with-body -H "$AUTH" "$@"; }
