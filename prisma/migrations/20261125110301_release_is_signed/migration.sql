-- A published release carries the signature of its manifest, and keeps it.
ALTER TABLE "release"
  ADD COLUMN "signature" TEXT,
  ADD CONSTRAINT "published_release_is_signed" CHECK ("state" = 'building' OR "signature" IS NOT NULL);

CREATE FUNCTION "release_signature_stands"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" <> 'building' AND OLD."signature" IS DISTINCT FROM NEW."signature" THEN
    RAISE EXCEPTION 'release_is_immutable: what is signed never changes' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "release_signature_stands" BEFORE UPDATE ON "release" FOR EACH ROW EXECUTE FUNCTION "release_signature_stands"();
