-- What took the place of a maker, a line or a variant: slugs never change, so what is called otherwise from now on is another, and the old name leads there.
CREATE TABLE "succession" (
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "slug" TEXT NOT NULL,
    "successor" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "succession_pkey" PRIMARY KEY ("id"),
    CONSTRAINT "succession_is_of_a_kind" CHECK ("kind" IN ('maker', 'line', 'variant')),
    CONSTRAINT "succession_leads_elsewhere" CHECK ("slug" <> "successor")
);
CREATE UNIQUE INDEX "succession_kind_slug_key" ON "succession"("kind", "slug");
CREATE INDEX "succession_by_id_idx" ON "succession"("by_id");
ALTER TABLE "succession" ADD CONSTRAINT "succession_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
CREATE TRIGGER "succession_is_append_only" BEFORE UPDATE OR DELETE ON "succession" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "succession_is_not_emptied" BEFORE TRUNCATE ON "succession" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- Who follows from one to the next comes to an end.
CREATE FUNCTION "succession_comes_to_an_end"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('succession', 0));
  IF EXISTS (
    WITH RECURSIVE next AS (
      SELECT NEW."successor" AS slug
      UNION SELECT s."successor" FROM "succession" s JOIN next n ON s."slug" = n.slug WHERE s."kind" = NEW."kind"
    ) SELECT 1 FROM next WHERE slug = NEW."slug") THEN
    RAISE EXCEPTION 'succession_comes_to_an_end: its successor leads back to it' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "succession_comes_to_an_end" BEFORE INSERT ON "succession" FOR EACH ROW EXECUTE FUNCTION "succession_comes_to_an_end"();

-- Changes tell of things as well as of editions.
ALTER TABLE "change" ALTER COLUMN "edition_id" DROP NOT NULL;
ALTER TABLE "change" ADD COLUMN "thing" JSONB;
ALTER TABLE "change" DROP CONSTRAINT "change_is_of_a_kind";
ALTER TABLE "change" ADD CONSTRAINT "change_is_of_a_kind" CHECK (
  ("kind" IN ('edition.opened', 'edition.closed') AND "edition_id" IS NOT NULL AND "release_id" IS NULL AND "thing" IS NULL)
  OR ("kind" IN ('release.published', 'erratum.published') AND "edition_id" IS NOT NULL AND "release_id" IS NOT NULL AND "thing" IS NULL)
  OR ("kind" IN ('variant.renamed', 'variant.reidentified', 'thing.succeeded') AND "edition_id" IS NULL AND "release_id" IS NULL AND "thing" IS NOT NULL));

CREATE FUNCTION "tell_change_of_thing"(of_kind TEXT, of_thing JSONB) RETURNS void LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('change', 0));
  INSERT INTO "change" ("number", "at", "kind", "thing")
  SELECT coalesce(max("number"), 0) + 1, clock_timestamp(), of_kind, of_thing FROM "change";
  PERFORM pg_notify('changes', '');
END $$;

-- Only of what anybody has read of: what is not published yet has no name out there.
CREATE FUNCTION "is_published_variant"(variant UUID) RETURNS boolean LANGUAGE sql STABLE AS $$
  SELECT EXISTS (SELECT 1 FROM "entry" e JOIN "release" r ON r."edition_id" = e."edition_id"
                 WHERE e."variant_id" = variant AND r."state" IN ('published', 'superseded'))
$$;
CREATE FUNCTION "variant_name"(variant UUID) RETURNS TEXT LANGUAGE sql STABLE AS $$
  SELECT concat_ws(' ', m."name", l."name", v."size", v."colour")
  FROM "variant" v JOIN "line" l ON l."id" = v."line_id" JOIN "maker" m ON m."id" = l."maker_id" WHERE v."id" = variant
$$;

CREATE FUNCTION "succession_is_a_change"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM "tell_change_of_thing"('thing.succeeded', jsonb_build_object('kind', NEW."kind", 'slug', NEW."slug", 'successor', NEW."successor"));
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER "succession_is_a_change" AFTER INSERT ON "succession" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW EXECUTE FUNCTION "succession_is_a_change"();

-- A name is made of the maker's, the line's and the variant's own words: where one of them changes, every variant that bears it is told of.
CREATE FUNCTION "name_is_a_change"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE named RECORD;
BEGIN
  FOR named IN
    SELECT v."id", v."slug" FROM "variant" v JOIN "line" l ON l."id" = v."line_id"
    WHERE NEW."id" IN (v."id", l."id", l."maker_id") AND "is_published_variant"(v."id") ORDER BY v."slug"
  LOOP
    PERFORM "tell_change_of_thing"('variant.renamed', jsonb_build_object('kind', 'variant', 'slug', named."slug", 'name', "variant_name"(named."id")));
  END LOOP;
  RETURN NULL;
END $$;
CREATE CONSTRAINT TRIGGER "maker_name_is_a_change" AFTER UPDATE ON "maker" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (OLD."name" IS DISTINCT FROM NEW."name") EXECUTE FUNCTION "name_is_a_change"();
CREATE CONSTRAINT TRIGGER "line_name_is_a_change" AFTER UPDATE ON "line" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (OLD."name" IS DISTINCT FROM NEW."name") EXECUTE FUNCTION "name_is_a_change"();
CREATE CONSTRAINT TRIGGER "variant_name_is_a_change" AFTER UPDATE ON "variant" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN ((OLD."size", OLD."colour") IS DISTINCT FROM (NEW."size", NEW."colour")) EXECUTE FUNCTION "name_is_a_change"();

-- A release that corrects what a spool is tells also which variant its results went to, after itself.
CREATE OR REPLACE FUNCTION "release_is_a_change"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE moved RECORD;
BEGIN
  PERFORM "tell_change"(CASE WHEN NEW."erratum" IS NULL THEN 'release.published' ELSE 'erratum.published' END,
    NEW."edition_id", NEW."id", NEW."published_at");
  IF NEW."erratum" ->> 'reasonCode' = 'reidentification' THEN
    FOR moved IN
      SELECT DISTINCT f."slug" AS was, t."slug" AS is_now FROM "spool_reidentification" r
      JOIN "variant" f ON f."id" = r."from_variant_id" JOIN "variant" t ON t."id" = r."to_variant_id"
      WHERE r."at" <= NEW."published_at"
        AND EXISTS (SELECT 1 FROM "submission" s WHERE s."spool_id" = r."spool_id" AND s."edition_id" = NEW."edition_id")
        AND r."at" > coalesce((SELECT max(o."published_at") FROM "release" o
                               WHERE o."edition_id" = NEW."edition_id" AND o."revision" < NEW."revision"), '-infinity')
      ORDER BY 1, 2
    LOOP
      PERFORM "tell_change_of_thing"('variant.reidentified', jsonb_build_object('kind', 'variant', 'slug', moved.was, 'successor', moved.is_now));
    END LOOP;
  END IF;
  RETURN NULL;
END $$;
