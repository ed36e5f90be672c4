using Lidoff.Evidence.Store;
using Lidoff.TestSupport;

namespace Lidoff.Evidence.Tests.Store;

public sealed class MemoryEntryStoreTests : EntryStoreContract
{
    protected override IEntryStore Make(string writer) => new MemoryEntryStore(Seeds.Of(writer), new SteppingClock());
}
