using Microsoft.AspNetCore.Components;

namespace Lidoff.Bench.Rooms.Open;

/// <summary>A part of the room Open, which knows what lies on the bench.</summary>
public abstract class OpenPanel : RoomPanel<OpenView>
{
    /// <summary>The specimen that is on the bench; empty where none was named.</summary>
    [Parameter]
    public string Specimen { get; set; } = "";
}
