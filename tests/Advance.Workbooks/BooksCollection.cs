namespace Advance.Workbooks;

/// <summary>All tests here look at the same workbooks.</summary>
[CollectionDefinition(Name)]
public sealed class BooksCollection : ICollectionFixture<PrintedBooks>
{
    public const string Name = "printed books";
}
