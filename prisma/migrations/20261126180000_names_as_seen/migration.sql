-- A name in another script may look like one that is there already: what is seen is unique too. Names from before stay as they are.
ALTER TABLE "account" ADD COLUMN "name_as_seen" TEXT;
UPDATE "account" SET "name_as_seen" = "display_name";
ALTER TABLE "account" ALTER COLUMN "name_as_seen" SET NOT NULL;
CREATE UNIQUE INDEX "account_name_as_seen_key" ON "account"("name_as_seen");
