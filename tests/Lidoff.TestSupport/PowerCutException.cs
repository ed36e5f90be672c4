namespace Lidoff.TestSupport;

/// <summary>The power failed. Nothing in the program catches it, as nothing could.</summary>
public sealed class PowerCutException() : Exception("the power failed");
