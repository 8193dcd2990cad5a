/** `npm run db:generate`: writes the database client that belongs to prisma/models/. Commit it with them. */
import { CLIENT, generateClient } from './models.js';

await generateClient(CLIENT);
