namespace Lidoff.Browser.Tests.Pages;

/// <summary>Every page of the workbench, as it stands on the demo. A new page gets a line here and is then tried in every look.</summary>
public static class AllPages
{
    public static IReadOnlyList<PageToBear> All { get; } =
    [
        new("dossiers", "/"),
        new("dossier", "/dossiers/demo"),
        new("no such dossier", "/dossiers/nobody", 404),
        new("nothing here", "/not-found"),
    ];
}
