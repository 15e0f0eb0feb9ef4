#!/usr/bin/env python3
"""What a cutoff costs: energy that the example pack gives, and leaves behind, by cutoff voltage."""
import json
import os
from urllib.request import Request, urlopen

url = os.environ.get("TRESTLE_URL", "http://127.0.0.1:8080") + "/v1/pack-energy"
request = json.load(urlopen(url + "/example"))
print("cutoff V/cell  usable Wh  below the cutoff Wh")
for cutoff_v in (2.8, 2.9, 3.0, 3.1, 3.2, 3.3, 3.4, 3.5):
    request["cutoff"] = {"cell_voltage_v": cutoff_v}
    body = json.dumps(request).encode()
    answer = json.load(urlopen(Request(url, body, {"Content-Type": "application/json"})))
    print(f"{cutoff_v:13.1f}{answer['usable_energy_wh']:11.1f}{answer['energy_below_cutoff_wh']:21.1f}")
