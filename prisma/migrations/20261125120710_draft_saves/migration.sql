-- CreateTable
CREATE TABLE "draft_save" (
    "submission_id" UUID NOT NULL,
    "version" INTEGER NOT NULL,
    "draft" JSONB NOT NULL,
    "saved_at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "draft_save_pkey" PRIMARY KEY ("submission_id","version")
);

-- AddForeignKey
ALTER TABLE "draft_save" ADD CONSTRAINT "draft_save_submission_id_fkey" FOREIGN KEY ("submission_id") REFERENCES "submission"("id") ON DELETE CASCADE ON UPDATE CASCADE;


