/// What each animal carries, and why. The front door is
/// [clutchwright.engine.inference.FromParents].
package clutchwright.engine.inference;
