using Lidoff.Evidence.Registering;

namespace Lidoff.Bench.Rooms;

/// <summary>All rooms, in the order of the strip.</summary>
public static class RoomList
{
    /// <summary>The rooms.</summary>
    public static IReadOnlyList<IRoom> All { get; } = [.. Registry.Of<IRoom>(room => room.Name, [typeof(IRoom).Assembly]).Items.OrderBy(room => room.Order)];
}
