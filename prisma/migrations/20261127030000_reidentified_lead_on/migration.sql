-- Any later revision may carry a re-identification, whatever else it puts right: the variant that its results went to is told after it.
CREATE OR REPLACE FUNCTION "release_is_a_change"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE moved RECORD;
BEGIN
  PERFORM "tell_change"(CASE WHEN NEW."erratum" IS NULL THEN 'release.published' ELSE 'erratum.published' END,
    NEW."edition_id", NEW."id", NEW."published_at");
  FOR moved IN
    SELECT DISTINCT f."slug" AS was, t."slug" AS is_now FROM "spool_reidentification" r
    JOIN "variant" f ON f."id" = r."from_variant_id" JOIN "variant" t ON t."id" = r."to_variant_id"
    WHERE r."at" <= NEW."published_at"
      AND EXISTS (SELECT 1 FROM "submission" s WHERE s."spool_id" = r."spool_id" AND s."edition_id" = NEW."edition_id")
      AND r."at" > (SELECT max(o."published_at") FROM "release" o
                    WHERE o."edition_id" = NEW."edition_id" AND o."revision" < NEW."revision")
    ORDER BY 1, 2
  LOOP
    PERFORM "tell_change_of_thing"('variant.reidentified', jsonb_build_object('kind', 'variant', 'slug', moved.was, 'successor', moved.is_now));
  END LOOP;
  RETURN NULL;
END $$;

-- Where the address of something leads: to what an editor said took its place; else, for a variant that no spool is any more, to the one that its results went to last.
CREATE VIEW "leads_to" AS
SELECT "kind", "slug", "successor" FROM "succession"
UNION ALL
(SELECT DISTINCT ON (c."thing" ->> 'slug') 'variant', c."thing" ->> 'slug', c."thing" ->> 'successor'
 FROM "change" c JOIN "variant" v ON v."slug" = c."thing" ->> 'slug'
 WHERE c."kind" = 'variant.reidentified'
   AND NOT EXISTS (SELECT 1 FROM "spool" s WHERE s."variant_id" = v."id")
   AND NOT EXISTS (SELECT 1 FROM "succession" n WHERE n."kind" = 'variant' AND n."slug" = v."slug")
 ORDER BY c."thing" ->> 'slug', c."number" DESC);
