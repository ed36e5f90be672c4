using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Measuring.Rulers;

/// <summary>Turns the rulers of a job into known lengths.</summary>
public static class RulerReferences
{
    // Printed and etched rulers: a few hundredths of a millimetre over their length, or a twentieth of a per cent. Common practice, no source.
    internal const double RulerU = 0.0005;

    /// <summary>The job with its rulers as references, and a sentence for each that was found; or what is wrong with them.</summary>
    /// <param name="job">The job.</param>
    /// <param name="look">The picture as it was looked at, or null where it could not be.</param>
    /// <param name="frame">The picture's size.</param>
    public static Outcome<(MeasureJob Job, IReadOnlyList<string> Says)> Add(MeasureJob job, PictureLook? look, PictureFrame frame)
    {
        Guard.NotNull(job);
        Guard.NotNull(frame);
        var (faults, says, references) = (new List<Fault>(), new List<string>(), new List<ReferenceLength>(job.References));
        for (var i = 0; i < job.Rulers.Count; i++)
        {
            var (where, ruler) = ($"ruler[{i}]", job.Rulers[i]);
            if (!frame.Holds(ruler.From) || !frame.Holds(ruler.To))
            {
                var out1 = frame.Holds(ruler.From) ? ruler.To : ruler.From;
                faults.Add(new(where, $"places within {frame.Width} × {frame.Height} pixels", SeeingSentences.OutsideFrame(where, out1.X, out1.Y, frame.Width, frame.Height)));
                continue;
            }

            if (ruler.From == ruler.To || look?.Grey is not { } grey || RulerSearch.Find(grey, ruler.From, ruler.To) is not { } found)
            {
                faults.Add(new(where, "a row of evenly spaced lines", SeeingSentences.Placed(where, SeeingSentences.NoRuler())));
                continue;
            }

            if ((ruler.TickMm ?? ByLongLines(found)) is not { } tick)
            {
                faults.Add(new(where + ".tick_mm", "the distance from line to line", SeeingSentences.Placed(where + ".tick_mm", SeeingSentences.RulerUnitOpen(found.Gaps, found.PeriodPx))));
                continue;
            }

            says.Add(SeeingSentences.RulerFound(found.Gaps, tick, found.PeriodPx / tick));
            references.AddRange(RulerProposals.Of(found).Reference(tick, ruler.HeightMm).Parts(i));
        }

        if (job.FindRulers)
        {
            var found = look?.Grey is { } picture ? RulerProposals.Of(picture) : [];
            if (found.Count == 0) faults.Add(new("ruler", "a ruler in the picture", SeeingSentences.Placed("ruler", SeeingSentences.NoRulerFound())));
            // Each that tells its unit counts; where none does, the first is asked about, with the place to point at.
            foreach (var ruler in found.Where(each => each.TickMm is not null))
            {
                says.Add(SeeingSentences.RulerAt(ruler.First.X, ruler.First.Y, ruler.Last.X, ruler.Last.Y) + " " + SeeingSentences.RulerFound(ruler.Gaps, ruler.TickMm!.Value, ruler.PeriodPx / ruler.TickMm.Value));
                references.AddRange(ruler.Reference(ruler.TickMm.Value).Parts(job.Rulers.Count + references.Count));
            }

            if (found.Count > 0 && found.All(each => each.TickMm is null)) faults.Add(new("ruler", "the distance from line to line", SeeingSentences.Placed("ruler", Open(found[0]))));
        }

        return faults.Count > 0 ? Outcome<(MeasureJob, IReadOnlyList<string>)>.Failed(faults) : (job with { References = references, Rulers = [], FindRulers = false }, says);
    }

    private static string Open(RulerProposal ruler) => string.Join(
        ' ',
        SeeingSentences.RulerAt(ruler.First.X, ruler.First.Y, ruler.Last.X, ruler.Last.Y),
        SeeingSentences.RulerUnitOpen(ruler.Gaps, ruler.PeriodPx),
        SeeingSentences.RulerPointed(ruler.First.X, ruler.First.Y, ruler.Last.X, ruler.Last.Y));

    /// <summary>
    /// Rulers by their longer lines, mm from line to line: every fifth or tenth is longer on metric ones, and every second besides where half
    /// millimetres stand between. An inch is halved again and again: its longest lines are every sixteenth, thirty-second or sixty-fourth, and
    /// which of them is seen only where the ruler shows lines enough that twice as many would have shown too. Common practice, no source.
    /// </summary>
    internal static double? ByLongLines(FoundRuler found)
    {
        var every = found.LongEvery;
        var metric = every.Contains(5) || every.Contains(10);
        var inch = every.Where(each => each is 4 or 8 or 16 or 32 or 64).DefaultIfEmpty(0).Max();
        if (metric == inch > 0) return null;
        if (metric) return every.Contains(2) ? 0.5 : 1;
        return inch >= 16 && found.Gaps + 1 >= 4 * inch ? 25.4 / inch : null;
    }
}
