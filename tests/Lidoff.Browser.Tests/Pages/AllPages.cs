using Lidoff.Bench.Rooms;

namespace Lidoff.Browser.Tests.Pages;

/// <summary>Every page of the workbench, as it stands on the demo. Rooms come by themselves; any other new page gets a line here.</summary>
public static class AllPages
{
    public static IReadOnlyList<PageToBear> All { get; } =
    [
        new("dossiers", "/"),
        new("dossier", "/dossiers/demo"),
        new("no such dossier", "/dossiers/nobody", 404),
        new("nothing here", "/not-found"),
        .. RoomList.All.Select(room => new PageToBear("room " + room.Name, "/dossiers/demo/" + room.Name)),
    ];
}
