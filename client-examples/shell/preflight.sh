#!/usr/bin/env bash
# Reviews an aircraft before it flies and tells the verdict by the exit code, for use in other
# scripts. Needs bash, curl and jq.
set -euo pipefail

readonly FIT=0 ATTENTION=1 STOP=2 REFUSED=3 UNREACHABLE=4 USAGE=64 NO_TOOL=69

usage() {
    cat << EOF
usage: ${0##*/} [DOCUMENT]

Has the aircraft in DOCUMENT (- or none: standard input) reviewed by the service at TRESTLE_URL
(${url}), prints the verdict and what stops the flight, and exits with
  $FIT  fit: no finding above a note
  $ATTENTION  attention: a margin is thin or an input doubtful
  $STOP  stop: a limit is passed
  $REFUSED  the document cannot be read, or the service refuses it; every fault is printed
  $UNREACHABLE  the service cannot be reached, or has no time now
  $USAGE  the command line is wrong
  $NO_TOOL  curl or jq is not installed
EOF
}

# Says why on standard error and gives up.
fail() {
    local code=$1
    shift
    printf '%s\n' "$@" >&2
    exit "$code"
}

url=${TRESTLE_URL:-http://127.0.0.1:8080}
url=${url%/}
case ${1:-} in
    -h | --help) usage; exit 0 ;;
    -?*) usage >&2; exit "$USAGE" ;;
esac
[[ $# -le 1 ]] || { usage >&2; exit "$USAGE"; }

for tool in curl jq; do
    command -v "$tool" > /dev/null || fail "$NO_TOOL" "$tool is not installed"
done

document=${1:--}
if [[ $document == - ]]; then document=/dev/stdin; fi
[[ -r $document && ! -d $document ]] || fail "$REFUSED" "cannot read $document"

# The body, and the status on a line of its own after it.
response=$(curl --silent --show-error --max-time 60 --write-out '\n%{http_code}' \
    --header 'Content-Type: application/json' --header 'Accept: application/json' \
    --data-binary @- "$url/v1/build-review" < "$document" 2>&1) ||
    fail "$UNREACHABLE" "cannot reach Trestle at $url: ${response%%$'\n'*}"
status=${response##*$'\n'}
body=${response%$'\n'*}

case $status in
    200) ;;
    400 | 413 | 415 | 422)
        faults=$(jq -er '.title, (.errors[]? | "  \(.at): \(.message)"), (.detail // empty)' \
            <<< "$body" 2> /dev/null) || fail "$UNREACHABLE" "$url is not Trestle"
        fail "$REFUSED" "$faults"
        ;;
    429 | 503) fail "$UNREACHABLE" "Trestle at $url has no time now ($status)" ;;
    *) fail "$UNREACHABLE" "$url is not Trestle ($status)" ;;
esac

verdict=$(jq -er '.verdict | strings' <<< "$body" 2> /dev/null) ||
    fail "$UNREACHABLE" "$url is not Trestle"
case $verdict in
    fit) code=$FIT ;;
    attention) code=$ATTENTION ;;
    stop) code=$STOP ;;
    *) fail "$UNREACHABLE" "$url gives a verdict that this script does not know: $verdict" ;;
esac
echo "$verdict"
jq -r '.findings[] | select(.severity == "stop")
    | "  \(.message) (\(.at | if . == "" then "the document as a whole" else . end))"' <<< "$body"
exit "$code"
