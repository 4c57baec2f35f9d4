#!/usr/bin/env bash
# Uses a freshly started installation as its owner would: makes the first account with the token from the log,
# signs in, reads the overview, restarts the application and finds everything again.
# Usage:  compose-smoke.sh BASE_ADDRESS PROJECT     the compose project must be up and without an account
set -euo pipefail

base=$1
project=$2
home=$(mktemp -d)
trap 'rm -rf "$home"' EXIT
owner="Smoke Owner"
password="smoke $(od -An -N16 -tx1 /dev/urandom | tr -d ' \n')" # never on a disk but in this run
page=$home/page.html

say() { echo "compose-smoke: $*"; }
refuse() {
  say "FAILED: $*" >&2
  head -c 2000 "$page" >&2 || true
  exit 1
}

# ask PATH [curl options]: the page's text into $page, its status on standard output
ask() {
  local path=$1
  shift
  curl --silent --show-error --max-time 60 --cookie "$home/cookies" --cookie-jar "$home/cookies" \
    --output "$page" --write-out '%{http_code}' "$@" "$base$path"
}
expect() { [ "$2" = "$3" ] || refuse "$1 answered $2, not $3"; }
must_say() { grep -qF -- "$1" "$page" || refuse "the page does not say '$1'"; }
csrf() { grep -oE '<input[^>]*name="_csrf"[^>]*>' "$page" | head -1 | sed -E 's/.*value="([^"]*)".*/\1/'; }

wait_until_healthy() {
  local container
  container=$(docker-compose -p "$project" ps -q app)
  for _ in $(seq 180); do
    [ "$(docker inspect -f '{{.State.Health.Status}}' "$container")" = healthy ] && return
    sleep 1
  done
  docker-compose -p "$project" logs --no-color --tail=60 app >&2
  refuse "the application is not healthy after 180 s"
}

# first_run_with TOKEN: fills in the first-run page and sends it
first_run_with() {
  expect "the first-run page" "$(ask /first-run)" 200
  ask /first-run --data-urlencode "token=$1" --data-urlencode "name=$owner" --data-urlencode "password=$password" \
    --data start=demo --data-urlencode "_csrf=$(csrf)"
}

sign_in() {
  : >"$home/cookies"
  expect "the sign-in page" "$(ask /sign-in)" 200
  expect "signing in" "$(ask /sign-in --data-urlencode "username=$owner" --data-urlencode "password=$password" \
    --data-urlencode "_csrf=$(csrf)")" 302
}

read_overview() {
  expect "the overview" "$(ask /)" 200
  must_say Tidewing
  must_say TW-F # a part number; only a page that read the register has one
  must_say '<svg'
}

: >"$page"
wait_until_healthy
token=$(docker-compose -p "$project" logs --no-color app | grep -oE 'one-time token: [0-9a-f]+' | tail -1 | sed 's/.* //')
[ -n "$token" ] || refuse "no one-time token in the log"

answer=$(first_run_with wrong)
[ "$answer" != 302 ] || refuse "a wrong token made an account"
expect "making the first account" "$(first_run_with "$token")" 302
say "the first account is made"

sign_in
read_overview
say "the overview shows the demo build"

docker-compose -p "$project" restart app >/dev/null 2>&1
wait_until_healthy
sign_in
read_overview
say "after a restart the overview is the same installation"
