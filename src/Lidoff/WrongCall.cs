using System.CommandLine.Parsing;
using System.Globalization;

namespace Lidoff;

/// <summary>What the parser finds wrong with a call, in our words.</summary>
internal static class WrongCall
{
    /// <summary>The sentence for what the parser found.</summary>
    public static string Says(ParseError error) => error.SymbolResult switch
    {
        OptionResult option when LacksValue(option) => CommandSentences.MissingValue(option.Option.Name),
        OptionResult { Tokens: [var token] } option when !Takes(option.Option.ValueType, token.Value) => CommandSentences.NoNumber(option.Option.Name, token.Value),
        ArgumentResult { Tokens.Count: 0 } argument => CommandSentences.MissingArgument(argument.Argument.Name, argument.Argument.Description),
        _ => error.Message,
    };

    /// <summary>True where an option that wants a value stands without one, or one of a command's does: asking for it would throw.</summary>
    public static bool LacksValue(SymbolResult result) => result switch
    {
        OptionResult { Implicit: false, Tokens.Count: 0 } option => option.Option.Arity.MinimumNumberOfValues > 0,
        CommandResult command => command.Children.OfType<OptionResult>().Any(LacksValue),
        _ => false,
    };

    // False where a number is wanted and the text is none of its kind.
    private static bool Takes(Type type, string text) => Type.GetTypeCode(Nullable.GetUnderlyingType(type) ?? type) switch
    {
        TypeCode.Int32 => int.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out _),
        TypeCode.Int64 => long.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out _),
        TypeCode.UInt64 => ulong.TryParse(text, NumberStyles.Integer, CultureInfo.InvariantCulture, out _),
        TypeCode.Double => double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out _),
        _ => true,
    };
}
