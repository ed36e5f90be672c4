namespace Lidoff.Evidence.Tests;
