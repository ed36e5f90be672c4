namespace Lidoff.Evidence.Tests.Folding;

/// <summary>The plainest sighting there can be, for tests of the journal.</summary>
public sealed record Word(string Text);
