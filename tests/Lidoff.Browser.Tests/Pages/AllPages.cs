using Lidoff.Bench.Rooms;

namespace Lidoff.Browser.Tests.Pages;

/// <summary>Every page of the workbench, as it stands on the demo. Rooms come by themselves; any other new page gets a
/// line here. <c>{main-top}</c> stands for the hash of the main board's picture.</summary>
public static class AllPages
{
    public static IReadOnlyList<PageToBear> All { get; } =
    [
        new("dossiers", "/"),
        new("dossier", "/dossiers/demo"),
        new("no such dossier", "/dossiers/nobody", 404),
        new("nothing here", "/not-found"),
        new("picture", "/dossiers/demo/see/{main-top}"),
        new("laying", "/dossiers/demo/see/{main-top}/lay"),
        new("spot", "/dossiers/demo/name/U3"),
        new("number", "/dossiers/demo/reckon/R2"),
        new("presenter", "/dossiers/demo/present"),
        .. RoomList.All.Select(room => new PageToBear("room " + room.Name, "/dossiers/demo/" + room.Name)),
    ];
}
