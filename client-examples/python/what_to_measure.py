#!/usr/bin/env python3
"""What to measure first: how sure an aircraft's main figures are, and which unknown widens them most.

Usage: what_to_measure.py [AIRCRAFT.json]   with the service at TRESTLE_URL, or http://127.0.0.1:8080
Without a file: ten facts about the example aircraft, before anything of it is built.
"""
import json
import os
import sys
from urllib.error import HTTPError
from urllib.request import Request, urlopen

TEN_FACTS = {
    "airframe": {"kind": "payload_pusher", "takeoff_mass_g": 6600, "wing": {"span_mm": 2800, "mean_chord_mm": 280}},
    "packs": [{"layout": "7s3p", "cell": {"kind": "energy", "format": "21700"}}],
    "propulsion": {"motor": {"speed_constant_rpm_per_v": 320}, "propeller": {"size": "15x8"}},
    "flight": {"airspeed_m_per_s": 16},
}

if len(sys.argv) > 1:
    with open(sys.argv[1], encoding="utf-8") as file:
        aircraft = json.load(file)
else:
    aircraft = TEN_FACTS
url = os.environ.get("TRESTLE_URL", "http://127.0.0.1:8080") + "/v1/build-review"
try:
    answer = json.load(urlopen(Request(url, json.dumps(aircraft).encode(), {"Content-Type": "application/json"})))
except HTTPError as refused:
    problem = json.load(refused)
    for fault in problem.get("errors", []):
        print(f"{fault['at']}: {fault['message']}", file=sys.stderr)
    sys.exit(f"{refused.code}: {problem['title']}")

print(answer["verdict"])
for name, band in answer.get("bands", {}).items():
    print(f"{name:24}{band['p10']:10.4g} to {band['p90']:.4g}")
print("measure first")
for estimate in answer.get("estimates", []):
    narrows = estimate.get("narrows_percent", 0)
    if narrows >= 1:
        unit = " " + estimate["unit"] if "unit" in estimate else ""
        print(f"{narrows:5.1f} % narrower  {estimate['at']}: {estimate['median']:.4g}{unit}"
              f" ({estimate['low']:.4g} to {estimate['high']:.4g}), from {estimate['from']}")
print(answer["cautions"][0])
