using Lidoff.Bench.Data;
using Lidoff.Bench.Rooms;
using Lidoff.Evidence.Entries;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Bench.Components.Layout;

/// <summary>What stands around every page of a dossier.</summary>
/// <param name="Notices">What is shown on every page, such as that all of it is invented.</param>
/// <param name="Rooms">Name, title, key and tally of each room.</param>
public sealed record FrameView(ValueList<string> Notices, ValueList<RoomTally> Rooms)
{
    /// <summary>The frame as the dossier stands.</summary>
    public static FrameView Of(OpenDossier dossier)
    {
        var view = dossier.Session.View;
        return new(DossierOverview.NoticesOf(view), [.. RoomList.All.Select(room => new RoomTally(room.Name, room.Title, room.Order, room.Tally(dossier)))]);
    }
}
