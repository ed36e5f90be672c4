using System.Text.Json;
using Lidoff.Numbers.Failing;
using Lidoff.Seeing.Pictures;
using Lidoff.Talking;

namespace Lidoff.Reading;

/// <summary>What every form of <c>lidoff read</c> does with picture files, one after the other: remarks, faults, lines or JSON, and how it ends.</summary>
internal static class EachPicture
{
    // What people are shown of the readings of a value; JSON holds all.
    private const double WorthALine = 0.001;
    private const int MostValues = 5;

    /// <summary>Reads each picture.</summary>
    /// <param name="seat">Where it is asked.</param>
    /// <param name="images">Names as they were given.</param>
    /// <param name="json">One object a picture instead of lines.</param>
    /// <param name="read">Reads one: its path, its name, its header.</param>
    /// <param name="says">What is said of a reading beside it.</param>
    /// <param name="show">Its lines.</param>
    /// <param name="write">Its keys, behind <c>image</c>.</param>
    /// <param name="stop">Stops between two pictures.</param>
    public static int Run<T>(
        Seat seat, IReadOnlyList<string> images, bool json, Func<string, string, PictureHeader, Outcome<T>> read, Func<T, IEnumerable<string>> says, Action<T> show, Action<Utf8JsonWriter, T> write, CancellationToken stop)
    {
        var refused = 0;
        foreach (var image in images)
        {
            stop.ThrowIfCancellationRequested();
            var path = seat.PathOf(image);
            var outcome = PictureFile.Read(path, image).Then(header =>
            {
                foreach (var remark in header.Remarks) seat.Talk.Say(remark);
                return read(path, image, header);
            });
            if (!outcome.TryValue(out var found))
            {
                refused++;
                if (json) seat.Talk.JsonFault(image, outcome.Faults);
                seat.Talk.SayFaults(outcome.Faults);
                continue;
            }

            foreach (var said in says(found)) seat.Talk.Say($"{image}: {said}");
            if (json)
            {
                seat.Talk.Json(writer =>
                {
                    writer.WriteString("image", image);
                    write(writer, found);
                });
            }
            else
            {
                show(found);
            }
        }

        return refused == 0 ? ExitCodes.Done : refused == images.Count ? ExitCodes.Refused : ExitCodes.Look;
    }

    /// <summary>The likeliest readings of a value, as many as people are shown.</summary>
    public static IEnumerable<T> WorthShowing<T>(IEnumerable<T> readings, Func<T, double> p) => readings.Where(each => p(each) >= WorthALine).Take(MostValues);
}
