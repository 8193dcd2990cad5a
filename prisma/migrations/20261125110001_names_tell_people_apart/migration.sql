-- Evidence names people by their display name: two people of one name would count as one tester.
CREATE UNIQUE INDEX "account_display_name_key" ON "account"("display_name");
