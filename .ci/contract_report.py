"""Adds up what the generated contract test found, and fails if a case was answered against the contract.

The contract lets the service refuse with 422 what is well-formed but contradicts itself, which the rules
for each field by itself cannot tell, and with 400 what lacks one of several fields that stand for each other,
like a layout or its two counts. So a request that was drawn, instead of taken from an example as it stands,
may come back with either.
"""

import sys
import xml.etree.ElementTree as xml

CONTRADICTIONS = tuple(
    f"Specification expected status 200 but response contained status {status}" for status in (400, 422)
)

# Some thousands are drawn; many fewer would mean that the generator has lost its way.
FEWEST_CASES = 1000


def is_drawn(case):
    """Whether it is a good request that is more than an example: its name then says what was changed."""
    return "+ve " in case.get("name") and " where " in case.get("name")


passed, contradictory, failed = 0, 0, []
for case in xml.parse(sys.argv[1]).getroot().iter("testcase"):
    failures = [element.text or "" for element in case if element.tag in ("failure", "error")]
    if not failures:
        passed += 1
    elif is_drawn(case) and all(
        any(told in failure for told in CONTRADICTIONS) for failure in failures
    ):
        contradictory += 1
    else:
        failed.append("\n".join([case.get("name")] + [failure.split("\tat ")[0] for failure in failures]))

for failure in failed:
    print(failure)
print(
    f"Contract: {passed} cases as it says, {contradictory} drawn requests that contradict themselves,"
    f" {len(failed)} failed"
)
sys.exit(1 if failed or passed < FEWEST_CASES else 0)
