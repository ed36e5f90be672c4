namespace Lidoff.Tests.Demo;

/// <summary>Tests that look at the demo as it was laid out once.</summary>
[CollectionDefinition("the demo")]
public sealed class DemoCollection : ICollectionFixture<LaidDemo>;
