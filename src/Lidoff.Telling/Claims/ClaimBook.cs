using Lidoff.Evidence.Entries;
using Lidoff.Evidence.Folding;
using Lidoff.Evidence.Grading;

namespace Lidoff.Telling.Claims;

/// <summary>Turns written claims into claims as they read today. Pure: the same sightings and values give the same claims.</summary>
public static class ClaimBook
{
    /// <summary>
    /// Every live claim in name order; of two with one name the later in fold order counts. <paramref name="value"/> resolves a
    /// reference, <paramref name="program"/> is this program's version, <paramref name="erased"/> holds the ids of entries that were erased.
    /// </summary>
    public static IReadOnlyList<Claim> Read(
        IReadOnlyList<Sighting<ClaimWritten>> written,
        IReadOnlyList<Sighting<ClaimsPublished>> published,
        Func<string, ClaimValue> value,
        string program,
        IReadOnlySet<string>? erased = null)
    {
        var baselines = new Dictionary<string, ClaimBaseline>(StringComparer.Ordinal);
        foreach (var baseline in published.SelectMany(sighting => sighting.Value.Claims)) baselines[baseline.Claim] = baseline;
        var newest = new Dictionary<string, Sighting<ClaimWritten>>(StringComparer.Ordinal);
        foreach (var sighting in written) newest[sighting.Value.Name] = sighting;
        return [.. newest.Values.OrderBy(sighting => sighting.Value.Name, NaturalOrder.Instance).Select(sighting => Of(sighting, baselines.GetValueOrDefault(sighting.Value.Name), value, program, erased))];
    }

    /// <summary>What is written into the journal when a claim is published as it reads now.</summary>
    public static ClaimBaseline Baseline(Claim claim, string program) => new(
        claim.Name,
        program,
        [.. claim.Values.Select(value => new BaselineValue(value.Reference, value.Value, value.U, value.Low, value.High, value.Text, [.. value.RestsOn.Order().Select(id => id.Hex)]))]);

    /// <summary>Compares a claim's values with what was published of them.</summary>
    public static ClaimState Compare(IReadOnlyList<ClaimValue> now, ClaimBaseline? then, string program)
    {
        if (now.Any(value => value.Lost)) return ClaimState.Lost;
        if (then is null) return ClaimState.Same;
        var worst = ClaimState.Same;
        var sameSupport = true;
        foreach (var value in now)
        {
            var old = then.Values.FirstOrDefault(each => each.Reference == value.Reference);
            if (old is null) continue;
            sameSupport &= old.RestsOn.SequenceEqual(value.RestsOn.Order().Select(id => id.Hex), StringComparer.Ordinal);
            var state = Compare(value, old);
            if (state > worst) worst = state;
        }

        return worst != ClaimState.Same && sameSupport && then.Program != program ? ClaimState.ProgramChanged : worst;
    }

    private static ClaimState Compare(ClaimValue now, BaselineValue then)
    {
        if (!string.Equals(now.Text, then.Text, StringComparison.Ordinal)) return ClaimState.Flipped;
        if (now.Value is not { } value || then.Value is not { } old) return now.Value is null == then.Value is null ? ClaimState.Same : ClaimState.Flipped;
        // The published 90 % interval is what the reader saw printed, so that is the line a number must not cross unsaid.
        if (value < then.Low || value > then.High) return ClaimState.Outside;
        return value.Equals(old) && Nullable.Equals(now.U, then.U) ? ClaimState.Same : ClaimState.Moved;
    }

    private static Claim Of(Sighting<ClaimWritten> sighting, ClaimBaseline? baseline, Func<string, ClaimValue> value, string program, IReadOnlySet<string>? erased)
    {
        var text = ClaimText.Parse(sighting.Value.Text).Value;
        var values = text.References.ToDictionary(reference => reference, value, StringComparer.Ordinal);
        var inOrder = text.References.Select(reference => values[reference]).ToList();
        // A sentence without a figure or a name in it rests on its writer's word alone.
        var grade = inOrder.Count == 0 ? Grade.E1 : Grades.Worst(inOrder.Select(each => each.Grade));
        if (sighting.Value.Why && grade > Grade.E2) grade = Grade.E2;
        var reads = string.Concat(text.Pieces.Select(piece => piece.IsReference ? values[piece.Text].Printed : piece.Text));
        EntryId[] restsOn = [sighting.Id, .. inOrder.SelectMany(each => each.RestsOn).Distinct().Order()];
        var gone = erased is not null && baseline is not null && baseline.Values.SelectMany(each => each.RestsOn).Any(erased.Contains);
        return new Claim(sighting.Value.Name, reads, text.Pieces, inOrder, grade, Compare(inOrder, baseline, program), baseline, sighting.Id, restsOn, gone);
    }
}
