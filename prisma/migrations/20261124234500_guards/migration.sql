-- What the schema file cannot say.

-- A customer belongs to a company, and nobody else does.
ALTER TABLE "User" ADD CONSTRAINT "User_client_of_customer" CHECK (("role" = 'customer') = ("clientId" IS NOT NULL));

ALTER TABLE "OfferRevision" ADD CONSTRAINT "OfferRevision_sent_at" CHECK ("state" <> 'sent' OR "sentAt" IS NOT NULL);

-- A saved revision of a system is evidence: it is never changed and never deleted.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% % is kept as it was saved', TG_TABLE_NAME, OLD."id" USING ERRCODE = 'restrict_violation';
END $$;

CREATE TRIGGER "SystemRevision_kept" BEFORE UPDATE OR DELETE ON "SystemRevision"
  FOR EACH ROW EXECUTE FUNCTION refuse_change();

-- An offer that was sent stands as it was sent; a newer one may replace it, and nothing else happens to it.
CREATE FUNCTION guard_sent_offer() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" NOT IN ('sent', 'replaced') THEN
    RETURN CASE TG_OP WHEN 'DELETE' THEN OLD ELSE NEW END;
  END IF;
  IF TG_OP = 'UPDATE' AND OLD."state" = 'sent' AND NEW."state" = 'replaced'
     AND to_jsonb(NEW) - 'state' = to_jsonb(OLD) - 'state' THEN
    RETURN NEW;
  END IF;
  RAISE EXCEPTION 'OfferRevision % was sent and is kept as it was', OLD."id" USING ERRCODE = 'restrict_violation';
END $$;

CREATE TRIGGER "OfferRevision_kept" BEFORE UPDATE OR DELETE ON "OfferRevision"
  FOR EACH ROW EXECUTE FUNCTION guard_sent_offer();
