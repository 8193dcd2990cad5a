-- The record is read by person and by object, whatever its kind.
DROP INDEX "audit_event_object_type_object_id_idx";
CREATE INDEX "audit_event_object_id_object_type_idx" ON "audit_event"("object_id", "object_type");
CREATE INDEX "audit_event_actor_id_id_idx" ON "audit_event"("actor_id", "id");
