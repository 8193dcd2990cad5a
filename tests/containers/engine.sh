#!/bin/bash
# Finds a container engine with its compose plugin, or brings one up from Debian's packages, and prints the variables that reach it.
# engine.sh <scratch folder>; ends with 3, and says why, where none can be had.
set -euo pipefail
scratch=$(mkdir -p "$1" && cd "$1" && pwd)
skip() { echo "$1" >&2; exit 3; }

if [ -z "${FAIRPULL_OWN_ENGINE:-}" ] && docker info >/dev/null 2>&1 && docker compose version >/dev/null 2>&1; then
  exit 0
fi
[ "$(id -u)" = 0 ] || skip 'no engine answers, and only root could start one'
command -v apt-get >/dev/null || skip 'no engine answers, and there is no apt-get to fetch one'
export DEBIAN_FRONTEND=noninteractive
if [ ! -x /usr/sbin/dockerd ] || ! command -v debootstrap >/dev/null; then
  { apt-get update -qq -o DPkg::Lock::Timeout=300 &&
    apt-get install -y -qq --no-install-recommends -o DPkg::Lock::Timeout=300 docker.io debootstrap iptables; } >"$scratch/apt.log" 2>&1 ||
    skip "no engine answers, and Debian's could not be installed (see $scratch/apt.log)"
fi
plugin=$scratch/config/cli-plugins/docker-compose
if [ ! -x "$plugin" ]; then
  # The compose plugin comes from the next release of Debian, from where this machine takes its own; nothing of it is installed.
  mirror=$(apt-get indextargets --format '$(REPO_URI)' | grep -v security | head -n 1)
  mkdir -p "$(dirname "$plugin")" "$scratch/apt/lists/partial"
  printf "Types: deb\nURIs: $mirror\nSuites: trixie\nComponents: main\nSigned-By: /usr/share/keyrings/debian-archive-keyring.gpg\n" >"$scratch/apt/next.sources"
  next=(-o Dir::Etc::sourcelist=/dev/null -o "Dir::Etc::sourceparts=$scratch/apt" -o "Dir::State::lists=$scratch/apt/lists" -o Dir::Cache::pkgcache= -o Dir::Cache::srcpkgcache=)
  (cd "$scratch/apt" && apt-get "${next[@]}" update -qq && apt-get "${next[@]}" download -qq docker-compose && dpkg-deb -x docker-compose_*.deb content) \
    >>"$scratch/apt.log" 2>&1 || skip "the compose plugin could not be fetched (see $scratch/apt.log)"
  cp "$(find "$scratch/apt/content" -type f -size +10M | head -n 1)" "$plugin"
  chmod +x "$plugin"
fi
socket=unix://$scratch/engine.sock
if ! DOCKER_HOST=$socket /usr/bin/docker info >/dev/null 2>&1; then
  dockerd --data-root "$scratch/data" --exec-root "$scratch/exec" --pidfile "$scratch/engine.pid" -H "$socket" >"$scratch/engine.log" 2>&1 &
  for _ in $(seq 60); do
    DOCKER_HOST=$socket /usr/bin/docker info >/dev/null 2>&1 && break
    sleep 1
  done
  started=$(cat "$scratch/engine.pid" 2>/dev/null || true)
fi
DOCKER_HOST=$socket /usr/bin/docker info >/dev/null 2>&1 || skip "the engine did not start (see $scratch/engine.log)"
echo "DOCKER_HOST=$socket"
[ -z "${started:-}" ] || echo "STARTED_ENGINE=$started"
echo "DOCKER_CONFIG=$scratch/config"
echo "PATH=/usr/bin:$PATH"
