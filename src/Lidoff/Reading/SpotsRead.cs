using System.Text.Json;
using Lidoff.Evidence.Entries;
using Lidoff.Numbers.Failing;
using Lidoff.Numbers.Typed.Codes.Bands;
using Lidoff.Seeing.Kinds;
using Lidoff.Seeing.Reading;
using Lidoff.Seeing.Reading.Finding;
using Lidoff.Seeing.Reading.Networks;
using Lidoff.Seeing.Reading.Spots;
using Lidoff.Talking;
using Lidoff.Telling.Dossiers;

namespace Lidoff.Reading;

/// <summary>Reads marks of a dossier's spots for <c>lidoff read</c>; each is stored as it is read.</summary>
internal sealed class SpotsRead(Seat seat, OpenDossier open, IReadingNetworks networks, bool json)
{
    private readonly SpotReader reader = new(networks);

    /// <summary>Reads the spots named, or with null all that are left.</summary>
    public int Run(string[]? spots, bool withMarked, CancellationToken stop)
    {
        var (read, refused) = (0, 0);
        void Refuse(string name, IReadOnlyList<Fault> faults)
        {
            refused++;
            if (json) seat.Talk.JsonFault(name, faults);
            seat.Talk.SayFaults(faults);
        }

        var wanted = new List<SpotToRead>();
        if (spots is null)
        {
            var left = SpotsToRead.Left(open, networks.Hashes, withMarked);
            wanted.AddRange(left.Wanted);
            if (left.Wanted.Count == 0 || left.ByPeople + left.Unread > 0) seat.Talk.Say(CommandSentences.MarksLeft(left));
        }
        else
        {
            foreach (var spot in spots.Distinct(StringComparer.Ordinal))
            {
                var marks = SpotsToRead.Of(open, spot);
                wanted.AddRange(marks);
                if (marks.Count == 0) Refuse(spot, [CommandSentences.SpotUnseen(spot)]);
            }
        }

        foreach (var mark in wanted)
        {
            stop.ThrowIfCancellationRequested();
            var stored = reader.Weigh(mark.Spot, mark.Pictures, [.. mark.Pictures.Select(picture => reader.Scan(mark.Spot, picture))], mark.Faults, OpenDossier.Program).Then<(EntryId, ReadingSighting)>(reading => Store(mark, reading));
            if (stored.TryValue(out var pair)) Tell(mark, pair.Item1, pair.Item2);
            else
            {
                Remember(mark, stored.Faults);
                Refuse(mark.Spot, stored.Faults);
            }

            read += stored.Ok ? 1 : 0;
        }

        return refused == 0 ? ExitCodes.Done : read == 0 ? ExitCodes.Refused : ExitCodes.Look;
    }

    private Outcome<(EntryId, ReadingSighting)> Store(SpotToRead mark, ReadingSighting reading)
    {
        var view = open.Session.View;
        if (StoredReadings.Same(view, mark.Specimen, reading) is { } same)
        {
            seat.Talk.Say(CommandSentences.ReadBefore(mark.Spot));
            return (same.Id, same.Value);
        }

        return Append(StoredReadings.Lines(view, mark.Specimen, reading)).Then(stored => (stored[0].Id, reading));
    }

    private void Remember(SpotToRead mark, IReadOnlyList<Fault> faults)
    {
        if (StoredUnread.Made(mark, networks.Hashes, OpenDossier.Program, faults) is not { } unread || StoredUnread.Lines(open.Session.View, mark.Specimen, unread) is not { } lines) return;
        var remembered = Append(lines);
        if (!remembered.Ok) seat.Talk.SayFaults(remembered.Faults);
    }

    private Outcome<IReadOnlyList<StoredEntry>> Append(ReadOnlyMemory<byte> lines) =>
        open.Append(new NoteReader(Desk.Kinds, prefix => open.Workspace.Store.Find(open.Session.View.Dossier, prefix)).Read(open.Session.View.Dossier, lines).Drafts);

    private void Tell(SpotToRead mark, EntryId id, ReadingSighting reading)
    {
        foreach (var says in reading.Says) seat.Talk.Say($"{mark.Spot}: {says}");
        if (json)
        {
            seat.Talk.Json(writer => Write(writer, mark.Specimen, id, reading));
            return;
        }

        seat.Talk.Line(CommandSentences.ReadOn(mark.Spot, mark.Specimen, reading.Lines.Count + reading.Bands.Count));
        foreach (var line in reading.Lines) seat.Talk.Line("  " + CommandSentences.Read(line.Line.Text, line.Readings));
        foreach (var each in EachPicture.WorthShowing(reading.BandOdds(null)?.Readings ?? [], each => each.P)) seat.Talk.Line("  " + CommandSentences.Value(string.Join(' ', each.Colours.Select(TypedBands.Name)), each.Reading.ToString(), "", each.P));
        if (reading.PinOne is { } dot) seat.Talk.Line("  " + dot.Says);
        foreach (var emblem in reading.Emblems) seat.Talk.Line("  " + ReadingSentences.Emblem(PictureRegion.Around([.. emblem.Outline.Select(corner => (corner.X, corner.Y))], 0)));
    }

    private static void Write(Utf8JsonWriter writer, string specimen, EntryId id, ReadingSighting reading)
    {
        writer.WriteString("id", id.Hex);
        writer.WriteString("kind", ReadingKind.Word);
        if (specimen.Length > 0) writer.WriteString("specimen", specimen);
        ReadingKind.WriteKeys(writer, reading);
    }
}
