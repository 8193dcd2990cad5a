-- Where the address of something leads: to the last of those that took its place one after the other. What an editor said comes to an end by
-- itself; where a re-identification would lead round, as of a spool that was told wrong twice, it leads nowhere.
CREATE OR REPLACE VIEW "leads_to" AS
WITH RECURSIVE moved AS (
  SELECT DISTINCT ON (c."thing" ->> 'slug') 'variant' AS kind, c."thing" ->> 'slug' AS slug, c."thing" ->> 'successor' AS successor
  FROM "change" c JOIN "variant" v ON v."slug" = c."thing" ->> 'slug'
  WHERE c."kind" = 'variant.reidentified'
    AND NOT EXISTS (SELECT 1 FROM "spool" s WHERE s."variant_id" = v."id")
    AND NOT EXISTS (SELECT 1 FROM "succession" n WHERE n."kind" = 'variant' AND n."slug" = v."slug")
  ORDER BY c."thing" ->> 'slug', c."number" DESC
), step AS (
  SELECT "kind" AS kind, "slug" AS slug, "successor" AS successor FROM "succession" UNION ALL SELECT * FROM moved
), passed AS (
  SELECT kind, slug, successor AS at FROM step
  UNION SELECT p.kind, p.slug, s.successor FROM passed p JOIN step s ON s.kind = p.kind AND s.slug = p.at
), kept AS (
  SELECT "kind" AS kind, "slug" AS slug, "successor" AS successor FROM "succession"
  UNION ALL SELECT * FROM moved m WHERE NOT EXISTS (SELECT 1 FROM passed p WHERE p.kind = m.kind AND p.slug = m.slug AND p.at = m.slug)
), way AS (
  SELECT kind, slug, successor AS at FROM kept
  UNION SELECT w.kind, w.slug, k.successor FROM way w JOIN kept k ON k.kind = w.kind AND k.slug = w.at
)
SELECT kind, slug, at AS successor FROM way w WHERE NOT EXISTS (SELECT 1 FROM kept k WHERE k.kind = w.kind AND k.slug = w.at);
