namespace Lidoff.Browser.Tests.Pages;

/// <summary>A page that every look is tried on.</summary>
/// <param name="Name">For test names and screenshots.</param>
/// <param name="Path">Its address on the demo bench.</param>
/// <param name="Status">What the server answers.</param>
public sealed record PageToBear(string Name, string Path, int Status = 200)
{
    public override string ToString() => Name;
}
