import type { INestApplication } from '@nestjs/common';
import { PATH_METADATA } from '@nestjs/common/constants.js';
import { ModulesContainer, Reflector } from '@nestjs/core';
import { ENDPOINT } from './endpoint.js';

/**
 * Stops the start when a route declares no access, so that nothing is open by oversight.
 * @throws Error that names each such route
 */
export function requireDeclaredAccess(app: INestApplication): void {
  const reflector = app.get(Reflector);
  const undeclared: string[] = [];
  for (const module of app.get(ModulesContainer).values()) {
    for (const { metatype } of module.controllers.values()) {
      if (typeof metatype !== 'function') continue;
      const prototype = metatype.prototype as Record<string, unknown>;
      for (const name of Object.getOwnPropertyNames(prototype)) {
        const handler = Object.getOwnPropertyDescriptor(prototype, name)?.value as (() => unknown) | undefined;
        if (name === 'constructor' || typeof handler !== 'function' || !Reflect.hasMetadata(PATH_METADATA, handler)) continue;
        if (!reflector.get(ENDPOINT, handler)) undeclared.push(`${metatype.name}.${name}`);
      }
    }
  }
  if (undeclared.length > 0)
    throw new Error(`These routes declare no access: ${undeclared.join(', ')}. Put @Endpoint({ allow: … }) on each.`);
}
