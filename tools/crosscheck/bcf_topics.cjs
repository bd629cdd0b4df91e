// Reads BCF files with @parametricos/bcf-js and prints what it sees of each as a line of JSON.
//   node bcf_topics.cjs VERSION=FILE...
const fs = require("fs");

function list(value) {
  return value === undefined || value === null ? [] : Array.isArray(value) ? value : [value];
}

async function topicsOf(file, version) {
  const reader = new (require(`@parametricos/bcf-js/dist/${version}`).BcfReader)();
  await reader.read(fs.readFileSync(file));
  const topics = [];
  for (const markup of reader.markups) {
    const views = list(markup.viewpoints);
    topics.push({
      guid: markup.topic.guid,
      title: markup.topic.title,
      header: list(markup.header && markup.header.files).map(f => f.file || f).map(f => [f.ifc_project, f.filename]),
      views: views.map(v => ({
        selected: list(v.components && v.components.selection).map(c => c.ifc_guid),
        camera: v.perspective_camera && v.perspective_camera.camera_view_point,
      })),
      snapshots: (await Promise.all(views.filter(v => v.snapshot).map(v => markup.getViewpointSnapshot(v)))).filter(s => s && s.length > 0).length,
    });
  }
  return topics;
}

(async () => {
  for (const argument of process.argv.slice(2)) {
    const [version, file] = argument.split("=");
    console.log(JSON.stringify({ file, topics: await topicsOf(file, version) }));
  }
})().catch(error => { console.error(error); process.exit(1); });
