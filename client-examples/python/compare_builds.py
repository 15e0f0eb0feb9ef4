#!/usr/bin/env python3
"""A trade study to a table: the example aircraft by drag and by cells in parallel, row for row as it is computed.

Usage: compare_builds.py [STUDY.json]   with the service at TRESTLE_URL, or http://127.0.0.1:8080
"""
import json
import os
import sys
from urllib.error import HTTPError
from urllib.request import Request, urlopen

base_url = os.environ.get("TRESTLE_URL", "http://127.0.0.1:8080")


def study():
    """The study of a file, or one of the example aircraft."""
    if len(sys.argv) > 1:
        with open(sys.argv[1], encoding="utf-8") as file:
            return json.load(file)
    return {
        "calculation": "build-review",
        "base": json.load(urlopen(base_url + "/v1/build-review/example")),
        "factors": [
            {"at": "/packs/0/parallel", "values": [2, 3, 4]},
            {"at": "/airframe/drag/zero_lift_coefficient", "from": 0.028, "to": 0.040, "steps": 4},
        ],
        "pick": ["/verdict", "/key_figures/total_mass_g", "/key_figures/stall_speed_m_per_s", "/endurance/at_airspeed/endurance_h"],
    }


def rows(asked):
    """Each row as it arrives."""
    headers = {"Content-Type": "application/json", "Accept": "application/x-ndjson"}
    with urlopen(Request(base_url + "/v1/trade-study", json.dumps(asked).encode(), headers)) as lines:
        for line in lines:
            yield json.loads(line)


def total(asked):
    """How many points the study has."""
    points = 1
    for factor in asked["factors"]:
        points *= factor.get("steps") or len(factor.get("values") or factor.get("words"))
    return points


def shown(value):
    return f"{value:.4g}" if isinstance(value, float) else str(value)


asked = study()
columns = None
try:
    for done, row in enumerate(rows(asked), start=1):
        print(f"\r{done} of {total(asked)}", end="", file=sys.stderr)
        if columns is None:
            columns = [name for name in row if name != "error"]
            print("\t".join(name.split(".")[-1] for name in columns) + "\terror")
        print("\t".join(shown(row.get(name, "")) for name in columns) + "\t" + row.get("error", ""))
except HTTPError as refused:
    problem = json.load(refused)
    for fault in problem.get("errors", []):
        print(f"{fault['at']}: {fault['message']}", file=sys.stderr)
    sys.exit(f"{refused.code}: {problem['title']}")
print(file=sys.stderr)
