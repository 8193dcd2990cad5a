-- AlterTable
ALTER TABLE "line" ADD COLUMN     "name_as_seen" TEXT;

-- AlterTable
ALTER TABLE "maker" ADD COLUMN     "name_as_seen" TEXT;

-- Two names that readers cannot tell apart are one name or none: who writes the same at once waits for the other.
CREATE FUNCTION "names_look_different"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE other text;
BEGIN
  IF TG_OP = 'UPDATE' AND OLD."name" = NEW."name" THEN RETURN NEW; END IF;
  PERFORM pg_advisory_xact_lock(hashtext(TG_TABLE_NAME || ' ' || coalesce(NEW."name_as_seen", NEW."name")));
  EXECUTE format('SELECT "name" FROM %I WHERE coalesce("name_as_seen", "name") = $1 AND "name" <> $2 AND "id" <> $3 LIMIT 1', TG_TABLE_NAME)
    INTO other USING coalesce(NEW."name_as_seen", NEW."name"), NEW."name", NEW."id";
  IF other IS NOT NULL THEN
    RAISE EXCEPTION 'names_look_different: "%" looks like "%", which is on record', NEW."name", other USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "names_look_different" BEFORE INSERT OR UPDATE ON "maker" FOR EACH ROW EXECUTE FUNCTION "names_look_different"();
CREATE TRIGGER "names_look_different" BEFORE INSERT OR UPDATE ON "line" FOR EACH ROW EXECUTE FUNCTION "names_look_different"();
