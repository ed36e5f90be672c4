using Lidoff.Numbers.Quantities;

namespace Lidoff.Telling.Claims;

/// <summary>What readers were told, in the words they were told it in; the bench and the report both say it so.</summary>
public static class PublishedText
{
    /// <summary>
    /// The published value as it was printed. A publication keeps numbers in the unit they were reckoned in and not its name; what the
    /// reference stands for now, <paramref name="now"/>, has it. Where that is lost the number stands without a unit.
    /// </summary>
    public static string Of(BaselineValue then, ClaimValue now)
    {
        if (then.Value is not { } value) return then.Text ?? "nothing";
        if (now.Unit.Length == 0 || !UnitReader.Read(now.Unit, now.Reference).TryValue(out var unit)) return QuantityText.Noted(value, then.U, "");
        return SpokenQuantity.Of(unit.ToSi(value), unit.SpanToSi(then.U ?? 0), unit);
    }

    /// <summary>The values of a claim that are not what was published of them: the value now, and what readers were told.</summary>
    public static IEnumerable<(ClaimValue Now, string Told)> Moved(Claim claim)
    {
        foreach (var now in claim.Values)
        {
            if (claim.Published?.Values.FirstOrDefault(each => each.Reference == now.Reference) is not { } then || (then.Value is null && then.Text is null && now.Lost)) continue;
            if (now.Lost || then.Text != now.Text || !Nullable.Equals(then.Value, now.Value) || !Nullable.Equals(then.U, now.U)) yield return (now, Of(then, now));
        }
    }
}
