#!/usr/bin/env bash
# Generates the Python, TypeScript, C# and Go clients from the document that the service answers by.
# Needs JDK 17 and Maven.
#
# Usage: generate.sh [DIRECTORY]      (client-examples/target/clients unless given)
set -euo pipefail

usage() {
    echo "usage: ${0##*/} [DIRECTORY]" >&2
    exit 64
}
[[ $# -le 1 && ${1:-} != -* ]] || usage

project=$(cd "$(dirname "${BASH_SOURCE[0]}")/../.." && pwd)
directory=${1:-$project/client-examples/target/clients}
mkdir -p -- "$directory"
directory=$(cd -- "$directory" && pwd)

# A client of an older document goes, or its leftovers would be taken for part of the new one; what
# was never generated stays.
for language in python typescript csharp go; do
    client=$directory/$language
    [[ -e $client ]] || continue
    if [[ ! -d $client/.openapi-generator ]]; then
        echo "$client is there and is no generated client: choose another directory" >&2
        exit 73
    fi
    rm -rf -- "$client"
done

log=$(mktemp)
trap 'rm -f -- "$log"' EXIT
if ! mvn -B -q -f "$project/pom.xml" -pl client-examples -am -Pclients generate-resources \
    "-Dclients.directory=$directory" > "$log" 2>&1; then
    cat "$log" >&2
    exit 1
fi
for language in python typescript csharp go; do
    echo "$directory/$language"
done
