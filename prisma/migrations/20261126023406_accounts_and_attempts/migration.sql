-- AlterTable
ALTER TABLE "idempotent_answer" ADD COLUMN     "attempt" UUID;

-- AlterTable
ALTER TABLE "invitation" ADD COLUMN     "revoked_at" TIMESTAMPTZ(3);

-- AlterTable
ALTER TABLE "session" ADD COLUMN     "id" UUID NOT NULL DEFAULT gen_random_uuid(),
ADD COLUMN     "network" TEXT;

-- AlterTable
ALTER TABLE "sign_in_failure" ADD COLUMN     "last_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP;

-- CreateTable
CREATE TABLE "password_reset" (
    "id" UUID NOT NULL,
    "account_id" UUID NOT NULL,
    "token_hash" TEXT NOT NULL,
    "made_by" UUID,
    "created_at" TIMESTAMPTZ(3) NOT NULL,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),

    CONSTRAINT "password_reset_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "password_reset_token_hash_key" ON "password_reset"("token_hash");

-- CreateIndex
CREATE INDEX "password_reset_account_id_idx" ON "password_reset"("account_id");

-- CreateIndex
CREATE UNIQUE INDEX "session_id_key" ON "session"("id");

-- AddForeignKey
ALTER TABLE "password_reset" ADD CONSTRAINT "password_reset_account_id_fkey" FOREIGN KEY ("account_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;


-- A house without an admin can be opened again by its machine alone; so the last one stays, whoever writes.
CREATE FUNCTION last_admin_stays() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT ('admin' = ANY(OLD.roles) AND NOT OLD.is_disabled) THEN RETURN COALESCE(NEW, OLD); END IF;
  IF TG_OP = 'UPDATE' AND 'admin' = ANY(NEW.roles) AND NOT NEW.is_disabled THEN RETURN NEW; END IF;
  -- One at a time: two who go at once would each see the other.
  PERFORM pg_advisory_xact_lock(hashtext('last_admin_stays'));
  IF NOT EXISTS (SELECT 1 FROM account WHERE id <> OLD.id AND 'admin' = ANY(roles) AND NOT is_disabled) THEN
    RAISE EXCEPTION 'last_admin_stays: give the role to somebody else first' USING ERRCODE = 'FP001';
  END IF;
  RETURN COALESCE(NEW, OLD);
END $$;
CREATE TRIGGER last_admin_stays BEFORE UPDATE OR DELETE ON account FOR EACH ROW EXECUTE FUNCTION last_admin_stays();
