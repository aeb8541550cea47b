/// What a chance is. Exact where a cross needs it: the front door is
/// [clutchwright.engine.probability.Distribution], whose weights are
/// [clutchwright.engine.probability.Fraction]s.
package clutchwright.engine.probability;
