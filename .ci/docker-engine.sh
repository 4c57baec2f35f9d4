#!/usr/bin/env bash
# Makes sure that a Docker engine answers and that two local images exist, without any image registry:
#   flangewright-postgres:local  a PostgreSQL server (POSTGRES_USER, POSTGRES_PASSWORD, POSTGRES_DB, port 5432)
#   flangewright-jre:local       a Java 17 runtime, the base for the application's image
# Usage:  eval "$(.ci/docker-engine.sh)"   prints `export` lines on standard output, its log on standard error.
# Where an engine already answers it is used as it is. Root on Debian 12; the images are built once a machine.
set -euo pipefail

home=${FLANGEWRIGHT_DOCKER_HOME:-/var/tmp/flangewright-docker}
postgres_image=flangewright-postgres:local
jre_image=flangewright-jre:local
here=$(cd "$(dirname "$0")" && pwd)
started=false

log() { echo "docker-engine: $*" >&2; }

need() {
  command -v "$1" >/dev/null && return
  log "installing $2"
  apt-get update -qq >&2
  DEBIAN_FRONTEND=noninteractive apt-get install -y -qq "$2" >&2
}

start_engine() {
  need dockerd docker.io
  need iptables iptables
  mkdir -p "$home"
  export DOCKER_HOST=unix://$home/docker.sock
  docker info >/dev/null 2>&1 && return
  log "starting an engine in $home"
  # Left by an engine that was killed; a process number in use again would stop the new one.
  rm -f "$home/dockerd.pid" "$home/exec/containerd/containerd.pid"
  setsid nohup dockerd --data-root "$home/data" --exec-root "$home/exec" --pidfile "$home/dockerd.pid" \
    --host "$DOCKER_HOST" >"$home/dockerd.log" 2>&1 </dev/null &
  for _ in $(seq 120); do
    docker info >/dev/null 2>&1 && started=true && return
    sleep 0.5
  done
  log "the engine did not start; the end of $home/dockerd.log:"
  tail -20 "$home/dockerd.log" >&2
  exit 1
}

# import IMAGE PACKAGES [docker import options]; a file tree named after the image, if there is one, is laid over it
import() {
  local image=$1 packages=$2 root
  shift 2
  docker image inspect "$image" >/dev/null 2>&1 && return
  need debootstrap debootstrap
  log "building $image (a minute or two, once a machine)"
  mkdir -p "$home"
  root=$(mktemp -d "$home/rootfs.XXXXXX")
  if ! debootstrap --variant=minbase --include="$packages" bookworm "$root" >"$home/debootstrap.log" 2>&1; then
    log "debootstrap failed; the end of $home/debootstrap.log:"
    tail -20 "$home/debootstrap.log" >&2
    exit 1
  fi
  if [ -d "$here/images/${image%:*}" ]; then cp -a "$here/images/${image%:*}/." "$root/"; fi
  rm -rf "$root"/var/cache/apt/archives/*.deb "$root"/var/lib/apt/lists/* "$root"/usr/share/{doc,man,locale}
  chmod 755 "$root" # mktemp made it private; a container's ordinary user must be able to enter /
  tar -C "$root" -c . | docker import "$@" - "$image" >&2
  rm -rf "$root"
}

docker info >/dev/null 2>&1 || start_engine
import "$postgres_image" postgresql,iproute2 \
  --change 'ENTRYPOINT ["/usr/local/bin/docker-entrypoint.sh"]' --change 'CMD ["postgres"]' --change 'EXPOSE 5432'
import "$jre_image" openjdk-17-jre-headless,ca-certificates,fontconfig,fonts-dejavu-core

echo "export DOCKER_HOST=${DOCKER_HOST:-unix:///var/run/docker.sock}"
echo "export TESTCONTAINERS_RYUK_DISABLED=true"      # the reaper's image is not to be had without a registry
echo "export TESTCONTAINERS_CHECKS_DISABLE=true"     # the start-up check would pull a tiny image
echo "export TESTCONTAINERS_HOST_OVERRIDE=127.0.0.1" # else a helper container is asked for the address
echo "export FLANGEWRIGHT_TEST_POSTGRES_IMAGE=$postgres_image"
echo "export FLANGEWRIGHT_POSTGRES_IMAGE=$postgres_image"
echo "export FLANGEWRIGHT_BASE_IMAGE=$jre_image"
if $started; then echo "export FLANGEWRIGHT_DOCKER_PID=$(cat "$home/dockerd.pid")"; fi
