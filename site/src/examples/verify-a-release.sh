# Verify a release: everything in one archive, its digest from the manifest, then every figure computed again.
HERE=${HERE:-http://127.0.0.1:3000}
EDITION=${EDITION:-2026}
REVISION=${REVISION:-1}
# A folder of its own: what the manifest does not list is a difference.
mkdir "release-$EDITION-$REVISION" && cd "release-$EDITION-$REVISION" || exit 1
curl -sf --remote-name-all "$HERE/v1/releases/$EDITION/$REVISION/{release.zip,manifest.json,signature.json}"
python3 -c 'import zipfile; zipfile.ZipFile("release.zip").extractall()'
node verify.mjs
