import { z } from 'zod';
import { quantity } from '../calculation.js';

export const nameField = z.string().min(1).meta({ description: 'What the part is' });

export const positive = (unit: string, symbol: string, description: string): z.ZodNumber =>
  quantity({ unit, symbol, description }, z.number().positive());

export const atLeastZero = (unit: string, symbol: string, description: string): z.ZodNumber =>
  quantity({ unit, symbol, description }, z.number().min(0));

/** From 0 to 1. */
export const share = (symbol: string, description: string): z.ZodNumber =>
  quantity({ unit: '1', symbol, description }, z.number().min(0).max(1));

export const sumOf = <T>(items: readonly T[], of: (item: T) => number): number =>
  items.reduce((sum, item) => sum + of(item), 0);
