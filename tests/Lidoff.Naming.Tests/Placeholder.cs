namespace Lidoff.Naming.Tests;
