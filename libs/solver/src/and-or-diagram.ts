/**
 * All combinations of groups that meet some constraints, as a diagram: a node fixes one variable; each of its edges
 * holds the groups that lead on alike, and the nodes below it, which are independent of each other. Nodes stand below
 * before above, so one pass over the arrays in order has the answers from below at hand.
 */
export interface AndOrDiagram {
  readonly variable: Int32Array;
  /** Edges of node n are `firstEdge[n]` up to `firstEdge[n + 1]`. */
  readonly firstEdge: Int32Array;
  /** Groups of edge e are `groups[firstGroup[e]]` up to `firstGroup[e + 1]`. */
  readonly firstGroup: Int32Array;
  readonly groups: Int32Array;
  /** Nodes below edge e are `below[firstBelow[e]]` up to `firstBelow[e + 1]`. */
  readonly firstBelow: Int32Array;
  readonly below: Int32Array;
  /** A node for each tree of variables; all of them together make a combination. */
  readonly roots: Int32Array;
}
