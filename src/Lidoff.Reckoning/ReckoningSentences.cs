using System.Globalization;
using Lidoff.Numbers.Failing;
using Lidoff.Reckoning.Reckon;

namespace Lidoff.Reckoning;

/// <summary>What people read when a number cannot be reckoned, or only with a remark.</summary>
public static class ReckoningSentences
{
    /// <summary>First order and Monte Carlo disagree.</summary>
    public const string Parted = "The formula bends inside this spread: the spread by first order and the one by Monte Carlo part. Read the median and the 90 % interval, not the value with its plain ±.";

    /// <summary>The formula was not checked against anything published.</summary>
    public const string Experimental = "This calculation is experimental: nothing published was at hand to check it against.";

    /// <summary>Nothing was asked for.</summary>
    public const string NoName = "Which number? `lidoff reckon --list` names all of them; one is asked for as `lidoff reckon runtime capacity=122 sleep_current=20`.";

    /// <summary>A name nobody knows.</summary>
    public static Fault UnknownCalculation(string name, IReadOnlyList<string> near) => new(
        "name",
        near.Count == 0 ? "a name from the list of calculations" : string.Join(", ", near),
        near.Count == 0
            ? $"There is no calculation \"{name}\"; `lidoff reckon --list` names all of them."
            : $"There is no calculation \"{name}\". Is it {Or(near)}?");

    /// <summary>A key the calculation does not have.</summary>
    public static Fault UnknownKey(string key, CalculationInfo info)
    {
        string[] keys = [.. info.Inputs.Select(input => input.Key)];
        var near = NameDistance.Nearest(key, keys, 1);
        return new(key, string.Join(", ", keys), near.Count == 0
            ? $"{info.Name} has no input \"{key}\"; its inputs are {string.Join(", ", keys)}."
            : $"{info.Name} has no input \"{key}\". Is it {near[0]}?");
    }

    /// <summary>A key that came more than once.</summary>
    public static Fault KeyTwice(CalculationInput input) => new(input.Key, "one value", $"\"{input.Key}\" is given more than once; it takes one value {Range(input)}.");

    /// <summary>A key that must be given.</summary>
    public static Fault Missing(CalculationInput input) => new(input.Key, Range(input), $"\"{input.Key}\" is missing: {input.Says}, {Range(input)}.");

    /// <summary>A value, or an end of its spread, outside the input's range.</summary>
    public static Fault OutOfRange(CalculationInput input, double si) =>
        new(input.Key, Range(input), $"\"{input.Key}\" should be {Range(input)}; {Number(input.Unit.FromSi(si))}{Tail(input.Unit)} is outside.");

    /// <summary>A referenced value of another kind than the input.</summary>
    public static Fault OtherDimension(CalculationInput input, string from, Dimension found) => new(
        input.Key, Dimensions.Name(input.Unit.Dimension),
        $"\"{input.Key}\" wants {Dimensions.Name(input.Unit.Dimension)}, for example in {input.Unit.Symbol}, but \"{from}\" is {Dimensions.Name(found)}.");

    /// <summary>A word that is not a key=value pair.</summary>
    public static Fault NoPair(string word) => new(word, "key=value", $"\"{word}\" is not of the form key=value.");

    /// <summary>A reference that leads nowhere.</summary>
    public static Fault NothingThere(string where, string from) => new(where, "something that was measured or reckoned", $"\"{where}\" comes from \"{from}\", and nothing of that name has a value.");

    /// <summary>A reckoning that rests on itself.</summary>
    public static Fault Circle(string where, string from) => new(where, "a reckoning that does not rest on itself", $"\"{where}\" comes from \"{from}\", which rests on this very reckoning.");

    /// <summary>The formula has no value at these inputs.</summary>
    public static Fault NoValue(string name) => new("name", "inputs with a value", $"{name} has no value for these inputs, or for too few of their draws.");

    /// <summary>A file column where no files are read.</summary>
    public static Fault NoFilesHere(string where) => new(where, "a typed value", $"\"{where}\" names a column of a file; files are only read on the command line.");

    /// <summary>A file that cannot be read.</summary>
    public static Fault FileUnreadable(string where, string file) => new(where, "a csv file in UTF-8", $"\"{where}\": the file {file} cannot be read as text.");

    /// <summary>A column that is not in the file.</summary>
    public static Fault NoColumn(string where, string file, string column, IReadOnlyList<string> names) =>
        new(where, string.Join(", ", names), $"\"{where}\": {file} has no column \"{column}\"; it has {string.Join(", ", names)}.");

    /// <summary>A cell that is not a number.</summary>
    public static Fault NoNumberInFile(string where, string file, int line, string cell) =>
        new(where, "a finite number in every line", string.Create(CultureInfo.InvariantCulture, $"\"{where}\": line {line} of {file} holds \"{cell}\", which is not a finite number."));

    /// <summary>A column that goes on and on.</summary>
    public static Fault TooManyValues(string where, string file, int most) =>
        new(where, "a shorter column", string.Create(CultureInfo.InvariantCulture, $"\"{where}\": {file} has more than {most} values."));

    /// <summary>A column without a number.</summary>
    public static Fault EmptyColumn(string where, string file, string column) => new(where, "at least one number", $"\"{where}\": column \"{column}\" of {file} is empty.");

    /// <summary>Inputs that were left at their defaults.</summary>
    public static string Assumed(IReadOnlyList<ReckonedInput> inputs) =>
        "Not given, so assumed: " + string.Join(", ", inputs.Select(i => $"{i.Input.Key} {Number(i.Input.Unit.FromSi(i.Value.Value))}{Tail(i.Input.Unit)}")) + ".";

    /// <summary>Draws outside the inputs' ranges.</summary>
    public static string DrawsLeftOut(double share) =>
        string.Create(CultureInfo.InvariantCulture, $"{share * 100:0.#} % of the draws fell outside what the inputs may be and were left out; the spread given is wide for this formula.");

    /// <summary>A result for people: the value with its doubt, where the doubt comes from, what it rests on.</summary>
    public static IEnumerable<string> Result(ReckonResult result)
    {
        Guard.NotNull(result);
        var (info, value) = (result.Info, result.Value);
        var spread = value.U > 0 ? $"; 90 % from {SpokenQuantity.Interval(value.Interval90.Low, value.Interval90.High, info.Unit, keepUnit: true)}" : "";
        yield return $"{info.Name}: {SpokenQuantity.Of(value.Value, value.U, info.Unit, keepUnit: true)}{spread}";
        var shares = value.Shares.Where(share => share.Share >= 0.005).OrderByDescending(share => share.Share).ThenBy(share => share.Input, StringComparer.Ordinal).ToList();
        if (shares.Count > 0)
            yield return "doubt from: " + string.Join(", ", shares.Select(share => string.Create(CultureInfo.InvariantCulture, $"{share.Input} {share.Share * 100:0} %")));
        yield return $"{ReckonJson.Word(info.Maturity)}: {info.Source}";
    }

    /// <summary>The range of an input in words: <c>from 0.01 to 1000000 mAh</c>.</summary>
    public static string Range(CalculationInput input) => $"from {Number(input.Unit.FromSi(input.Least))} to {Number(input.Unit.FromSi(input.Most))}{Tail(input.Unit)}";

    private static string Number(double value) => value.ToString("G12", CultureInfo.InvariantCulture);

    private static string Tail(Unit unit) => unit.Symbol == "1" ? "" : " " + unit.Symbol;

    private static string Or(IReadOnlyList<string> names) =>
        names.Count == 1 ? names[0] : string.Join(", ", names.Take(names.Count - 1)) + " or " + names[^1];
}
