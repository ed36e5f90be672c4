namespace Lidoff.Naming.Factors;

/// <summary>A reading that depends on the kind of part only.</summary>
internal sealed class GroupReading(FactorQuestion question, double[] logs, Func<int, string> say) : IFactorReading
{
    public double Part(int index) => logs[question.Catalogue.GroupOf[index]];

    public double None(int group) => logs[group];

    public string Say(int index) => say(index);
}
