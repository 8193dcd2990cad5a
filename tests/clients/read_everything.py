"""Reads every public document of a house by the classes that are generated from its description, and prints how many; a field of another type ends it."""

import json
import sys
import urllib.request

import fairpull

HERE = sys.argv[1]
read = []


def bare(value):
    """A value without what is null: what is absent and what is null are one to Python."""
    if isinstance(value, dict):
        return {key: bare(part) for key, part in value.items() if part is not None}
    return [bare(part) for part in value] if isinstance(value, list) else value


def get(path, name):
    """What an address holds, as an object; back in JSON it is what was sent."""
    with urllib.request.urlopen(HERE + path) as answer:
        sent = json.load(answer)
    document = getattr(fairpull, name + "_from_dict")(sent)
    again = getattr(fairpull, name + "_to_dict")(document)
    if bare(again) != bare(sent):
        raise ValueError(path + " is not the same when it is written again")
    read.append(path)
    return document


get("/v1/releases", "releases_response")
get("/v1/signing-keys", "signing_keys_response")
get("/v1/changes?after=0&limit=1000", "public_changes_response")
get("/v1/makers", "published_makers_response")
get("/v1/lines", "published_lines_response")
get("/v1/checks", "published_checks_response")
get("/v1/problems", "problems_response")
get("/v1/submissions/csv-columns", "csv_columns_response")
get("/v1/submission-actions", "action_table_response")
get("/v1/commitments", "commitments_response")
get("/v1/schemas", "schemas_response")

release = get("/v1/editions", "releases_response").items[0]
at = f"/v1/releases/{release.edition}/{release.revision}"
files = get(at + "/manifest.json", "manifest").files
get(at + "/signature.json", "release_signature")

edition = f"/v1/editions/{release.edition}"
division = f"{edition}/divisions/{get(edition, 'edition_file').divisions[0].slug}"
tables = get(division, "edition_document")
get(division + "/standings", "edition_document")
category = get(f"{division}/standings/{tables.scheme.categories[0].code}", "category_document")
get(division + "/records", "records_document")
get(division + "/pairs", "pairs_document")
get(edition + "/withdrawn", "withdrawn_document")
get(edition + "/claims", "claims_document")
get(edition + "/round-robins", "round_robins_document")
get(edition + "/retest-results", "retests_document")
get(edition + "/rigs", "rigs_document")
method = get(edition + "/catalogue", "catalogue_document").methods[0]
get(f"/v1/methods/{method.slug}/versions/{method.number}", "method_document")

variant = tables.overall[0].variant.slug
get(f"{edition}/variants/{variant}", "variant_document")
get(f"{edition}/variants/{variant}/provenance", "provenance_response")
get(f"/v1/variants/{variant}", "variant_document")
get(f"/v1/variants/{variant}/history", "variant_history_response")
get(f"/v1/variants/{variant}/specimens", "variant_specimens_response")

figure = category.rows[0].figure
print(len(read), len(files), figure.value, figure.unit)
