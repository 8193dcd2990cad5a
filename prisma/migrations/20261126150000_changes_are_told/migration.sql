-- What anybody may be told of, in the order in which it became true. Written with the act, kept for ever.
CREATE TABLE "change" (
    "number" BIGINT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "kind" TEXT NOT NULL,
    "edition_id" UUID NOT NULL,
    "release_id" UUID,

    CONSTRAINT "change_pkey" PRIMARY KEY ("number")
);
CREATE INDEX "change_edition_id_idx" ON "change"("edition_id");
CREATE INDEX "change_release_id_idx" ON "change"("release_id");
ALTER TABLE "change" ADD CONSTRAINT "change_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "change" ADD CONSTRAINT "change_release_id_fkey" FOREIGN KEY ("release_id") REFERENCES "release"("id") ON DELETE RESTRICT ON UPDATE CASCADE;
ALTER TABLE "change" ADD CONSTRAINT "change_is_of_a_kind" CHECK (
  ("kind" IN ('edition.opened', 'edition.closed') AND "release_id" IS NULL)
  OR ("kind" IN ('release.published', 'erratum.published') AND "release_id" IS NOT NULL));
CREATE TRIGGER "change_is_append_only" BEFORE UPDATE OR DELETE ON "change" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "change_is_not_emptied" BEFORE TRUNCATE ON "change" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- One writer at a time, from here to its commit: so numbers have no gaps, and whoever has read up to one has missed none before it.
CREATE FUNCTION "tell_change"(of_kind TEXT, of_edition UUID, of_release UUID, since TIMESTAMPTZ) RETURNS void LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_advisory_xact_lock(hashtextextended('change', 0));
  INSERT INTO "change" ("number", "at", "kind", "edition_id", "release_id")
  SELECT coalesce(max("number"), 0) + 1, since, of_kind, of_edition, of_release FROM "change";
  PERFORM pg_notify('changes', '');
END $$;

CREATE FUNCTION "release_is_a_change"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM "tell_change"(CASE WHEN NEW."erratum" IS NULL THEN 'release.published' ELSE 'erratum.published' END,
    NEW."edition_id", NEW."id", NEW."published_at");
  RETURN NULL;
END $$;
CREATE FUNCTION "edition_is_a_change"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM "tell_change"(CASE NEW."state" WHEN 'open' THEN 'edition.opened' ELSE 'edition.closed' END, NEW."id", NULL, clock_timestamp());
  RETURN NULL;
END $$;
-- Deferred to the commit, so that nobody waits for the rest of another's work.
CREATE CONSTRAINT TRIGGER "release_is_a_change" AFTER UPDATE ON "release" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (OLD."state" = 'building' AND NEW."state" = 'published') EXECUTE FUNCTION "release_is_a_change"();
CREATE CONSTRAINT TRIGGER "edition_is_a_change" AFTER UPDATE ON "edition" DEFERRABLE INITIALLY DEFERRED
  FOR EACH ROW WHEN (OLD."state" IS DISTINCT FROM NEW."state" AND NEW."state" IN ('open', 'closed')) EXECUTE FUNCTION "edition_is_a_change"();

-- What was published before changes were kept.
INSERT INTO "change" ("number", "at", "kind", "edition_id", "release_id")
SELECT row_number() OVER (ORDER BY "published_at", "edition_id", "revision"), "published_at",
  CASE WHEN "erratum" IS NULL THEN 'release.published' ELSE 'erratum.published' END, "edition_id", "id"
FROM "release" WHERE "state" IN ('published', 'superseded');
