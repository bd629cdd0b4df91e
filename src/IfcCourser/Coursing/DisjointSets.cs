namespace IfcCourser.Coursing;

/// <summary>Sets of walls, by index, that grow together; a set is named by its least wall.</summary>
internal sealed class DisjointSets(int count)
{
    private readonly int[] _parent = [.. Enumerable.Range(0, count)];

    public int Root(int item)
    {
        while (_parent[item] != item)
        {
            item = _parent[item] = _parent[_parent[item]];
        }

        return item;
    }

    public void Unite(int a, int b)
    {
        var (rootA, rootB) = (Root(a), Root(b));
        _parent[Math.Max(rootA, rootB)] = Math.Min(rootA, rootB);
    }
}
