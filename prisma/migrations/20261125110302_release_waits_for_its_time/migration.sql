-- A release may wait for its time. Until it is published nobody has seen it, and it can be called off.
ALTER TABLE "release" ADD COLUMN "publish_at" TIMESTAMPTZ(3);

CREATE OR REPLACE FUNCTION "release_is_immutable"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    IF OLD."state" = 'building' THEN
      RETURN OLD;
    END IF;
    RAISE EXCEPTION 'release_is_immutable: a release is never deleted' USING ERRCODE = 'FP001';
  END IF;
  IF (OLD."state", NEW."state") NOT IN (('building','building'), ('building','published'), ('published','superseded'))
     OR (OLD."state" <> 'building' AND (OLD."digest", OLD."manifest", OLD."published_at", OLD."revision", OLD."edition_id", OLD."erratum", OLD."previous_digest")
         IS DISTINCT FROM (NEW."digest", NEW."manifest", NEW."published_at", NEW."revision", NEW."edition_id", NEW."erratum", NEW."previous_digest")) THEN
    RAISE EXCEPTION 'release_is_immutable: what is published never changes' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
