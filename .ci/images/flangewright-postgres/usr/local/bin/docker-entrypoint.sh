#!/bin/bash
# Sets up a PostgreSQL cluster on the first start, then runs the server as the user postgres.
set -e
bin=$(printf "%s\n" /usr/lib/postgresql/*/bin | tail -1)
export PATH=$bin:$PATH PGDATA=${PGDATA:-/var/lib/postgresql/data}
[ "${1:-postgres}" = postgres ] || exec "$@"
shift || true
user=${POSTGRES_USER:-postgres} db=${POSTGRES_DB:-${POSTGRES_USER:-postgres}}
mkdir -p "$PGDATA" /var/run/postgresql
chown postgres "$PGDATA" /var/run/postgresql
chmod 700 "$PGDATA"
if [ ! -s "$PGDATA/PG_VERSION" ]; then
  setpriv --reuid=postgres --regid=postgres --init-groups initdb -U "$user" -A trust -E UTF8 --locale=C.UTF-8 -D "$PGDATA"
  echo 'host all all all scram-sha-256' >>"$PGDATA/pg_hba.conf"
  setpriv --reuid=postgres --regid=postgres --init-groups pg_ctl -w -D "$PGDATA" -o '-c listen_addresses=' start
  psql -v ON_ERROR_STOP=1 -v owner="$user" -v secret="$POSTGRES_PASSWORD" -U "$user" -d postgres <<<"ALTER USER :\"owner\" PASSWORD :'secret'"
  [ "$db" = postgres ] || createdb -U "$user" "$db"
  setpriv --reuid=postgres --regid=postgres --init-groups pg_ctl -w -D "$PGDATA" stop
fi
exec setpriv --reuid=postgres --regid=postgres --init-groups postgres -D "$PGDATA" -c listen_addresses='*' "$@"
