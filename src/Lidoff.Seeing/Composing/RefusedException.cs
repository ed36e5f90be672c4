using Lidoff.Numbers.Failing;

namespace Lidoff.Seeing.Composing;

/// <summary>Pictures that cannot be put together, found out in the midst of the work; the fault says why and what would help.</summary>
internal sealed class RefusedException(Fault fault) : Exception(fault.Say)
{
    public Fault Fault => fault;
}
