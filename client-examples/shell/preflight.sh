#!/usr/bin/env bash
# Reviews an aircraft before it flies and tells the verdict by the exit code, for use in other
# scripts. Needs bash, curl and jq.
set -euo pipefail

readonly FIT=0 ATTENTION=1 STOP=2 REFUSED=3 UNREACHABLE=4 USAGE=64 NO_TOOL=69

usage() {
    cat << EOF
usage: ${0##*/} [--all] [DOCUMENT]

Has the aircraft in DOCUMENT (- or none: standard input) reviewed by the service at TRESTLE_URL
(${url}), prints the verdict, its reasons and what was not judged (with --all also every check
that passed, and every caution), and exits with
  $FIT  fit: no finding above a note
  $ATTENTION  attention: a margin is thin, an input doubtful, or something was not judged
  $STOP  stop: a limit is exceeded
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
all=false
if [[ ${1:-} == --all ]]; then
    all=true
    shift
fi
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

verdict=$(jq -er 'select(.checks | arrays) | .verdict | strings' <<< "$body" 2> /dev/null) ||
    fail "$UNREACHABLE" "$url is not Trestle, or an older one"
case $verdict in
    fit) code=$FIT ;;
    attention) code=$ATTENTION ;;
    stop) code=$STOP ;;
    *) fail "$UNREACHABLE" "$url gives a verdict that this script does not know: $verdict" ;;
esac
echo "$verdict"
jq -r --argjson all "$all" '
    def place: if . == "" then "the document as a whole" else . end;
    def of($outcomes): map(select(.outcome | IN($outcomes[])));
    def rounded: if . == null or . == 0 then .
        else pow(10; 3 - (fabs | log10 | floor)) as $scale | (. * $scale | round) / $scale end;
    def margin: if . == null or . < 0 then "" else ", margin \(rounded) %" end;
    def measured($unit): "\(rounded)\(if $unit then " " + $unit else "" end)";
    (.findings[] | select(.severity != "note") | "  \(.severity): \(.message) (\(.at | place))"),
    (.checks | of(["not_judged"]) | group_by(.give)[]
        | "  not judged: \(map(.about) | unique | join("; ")) (give \(.[0].give // ["?"] | join(", ")))"),
    (if $all then .checks[] | select(.outcome == "passed") | .unit as $unit
        | "  passed: \(.about)"
            + (if .limit == null then ""
                else ", \(.value | measured($unit)) against \(.limit | measured($unit))" end)
            + (.margin_percent | margin)
        else empty end),
    (.checks | "\(of(["passed"]) | length) checks passed, \(of(["attention", "stop"]) | length) not passed, "
        + "\(of(["not_judged"]) | length) not judged."),
    (if $all then .cautions[] | "  - " + . else empty end)' <<< "$body"
echo "An aid, not an approval: local rules, makers' data and licensed practice come first."
if ! $all; then echo "Every check and caution: ${0##*/} --all"; fi
exit "$code"
