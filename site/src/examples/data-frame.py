# All results into a table: Python's own library; with pandas it is pandas.read_parquet(HERE + "/v1/results.parquet").
import csv
import io
import os
import urllib.request

here = os.environ.get("HERE", "http://127.0.0.1:3000")
with urllib.request.urlopen(here + "/v1/results.csv") as answer:
    rows = list(csv.DictReader(io.TextIOWrapper(answer, "utf-8", newline="")))
first = [row for row in rows if row["place"] == "1"]
for row in sorted(first, key=lambda row: (row["edition"], row["category"])):
    print(row["edition"], row["category"], row["variant"], row["value"], row["unit"])
