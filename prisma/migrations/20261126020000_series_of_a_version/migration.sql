-- A method version states the series that it yields. What is on record says so by the slug of its method, and by the knot or the
-- abrasion among its parameters; categories of schemes named their quantity by that.
ALTER TABLE "method_version" ADD COLUMN "series" JSONB;
ALTER TABLE "method_version" DISABLE TRIGGER USER;
ALTER TABLE "scheme" DISABLE TRIGGER USER;

UPDATE "method_version" v SET
  "series" = CASE
    WHEN m."slug" = 'diameter' THEN '[{"code": "outline", "kind": "diameterAlongStations", "stations": 1}]'::jsonb
    WHEN m."slug" = 'linear-density' THEN '[{"code": "mass", "kind": "linearDensity"}]'::jsonb
    ELSE '[{"code": "untreated", "kind": "breakingForce", "treatment": null}]'::jsonb || CASE m."slug"
      WHEN 'named-knot' THEN jsonb_build_array(jsonb_build_object('code', 'knotted', 'kind', 'breakingForce', 'treatment',
        jsonb_build_object('kind', 'knot', 'name', left(m."name", 60), 'words', coalesce(v."parameters"->>'knot', m."name"))))
      WHEN 'abrasion' THEN jsonb_build_array(jsonb_build_object('code', 'abraded', 'kind', 'breakingForce', 'treatment',
        jsonb_build_object('kind', 'abrasion', 'name', left(m."name", 60), 'words', coalesce(v."parameters"->>'abrasion', m."name"))))
      ELSE '[]'::jsonb END
    END,
  "parameters" = v."parameters" - 'knot' - 'abrasion' || jsonb_build_object('places',
    coalesce(v."parameters"->'places', '{}'::jsonb) - 'knotRetention' - 'abrasionRetention' || coalesce(
      CASE WHEN v."parameters"->'places' ?| ARRAY['knotRetention', 'abrasionRetention'] THEN jsonb_build_object('retention',
        coalesce(v."parameters"->'places'->'knotRetention', v."parameters"->'places'->'abrasionRetention')) END, '{}'::jsonb))
FROM "method" m WHERE m."id" = v."method_id";

UPDATE "scheme" SET "rules" = jsonb_set("rules", '{categories}', (
  SELECT jsonb_agg(c || CASE c->>'quantity'
    WHEN 'knotRetention' THEN '{"quantity": "retention", "method": "named-knot", "series": "knotted", "section": null}'::jsonb
    WHEN 'abrasionRetention' THEN '{"quantity": "retention", "method": "abrasion", "series": "abraded", "section": null}'
    WHEN 'apparentStress' THEN
      '{"method": "straight-pull", "series": "untreated", "section": {"method": "diameter", "series": "outline"}}'
    WHEN 'diameter' THEN '{"method": "diameter", "series": "outline", "section": null}'
    WHEN 'outOfRoundness' THEN '{"method": "diameter", "series": "outline", "section": null}'
    WHEN 'linearDensity' THEN '{"method": "linear-density", "series": "mass", "section": null}'
    ELSE '{"method": "straight-pull", "series": "untreated", "section": null}' END ORDER BY i)
  FROM jsonb_array_elements("rules"->'categories') WITH ORDINALITY AS t(c, i)));

ALTER TABLE "method_version" ENABLE TRIGGER USER;
ALTER TABLE "scheme" ENABLE TRIGGER USER;
ALTER TABLE "method_version" ALTER COLUMN "series" SET NOT NULL;
ALTER TABLE "method_version" ADD CONSTRAINT "method_version_yields_a_series"
  CHECK (jsonb_typeof("series") = 'array' AND jsonb_array_length("series") > 0);
