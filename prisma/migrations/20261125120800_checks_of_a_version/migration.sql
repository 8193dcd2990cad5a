-- AlterTable
ALTER TABLE "method_version" ADD COLUMN     "checks" JSONB NOT NULL DEFAULT '{}';



-- A version that begins on a day on which something was pulled already would take that submission from the version it was pulled by.
CREATE FUNCTION "method_version_begins_after_use"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "submission" s JOIN "method_version" v ON v."id" = s."method_version_id"
             WHERE v."method_id" = NEW."method_id" AND s."state" <> 'draft' AND s."bench_day" >= NEW."effective_from") THEN
    RAISE EXCEPTION 'method_version_begins_after_use: submissions of a later bench day are under the version before' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "method_version_begins_after_use" BEFORE INSERT ON "method_version" FOR EACH ROW EXECUTE FUNCTION "method_version_begins_after_use"();
