// Holds the Kubernetes job file to the schema of batch/v1 Job: kubernetes.mjs FILE prints what is wrong, a line each.
import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import { Job } from 'kubernetes-models/batch/v1';

const fault = job => {
  try {
    new Job(job).validate();
    return undefined;
  } catch (error) {
    return error.message;
  }
};

const job = parse(readFileSync(process.argv[2], 'utf8'));
const found = fault(job);
if (found) console.log(found);
// The schema lets unknown keys pass: a misspelt one would do nothing.
const known = { spec: ['backoffLimitPerIndex', 'completionMode', 'completions', 'parallelism', 'template'], pod: ['containers', 'restartPolicy', 'volumes'] };
for (const key of Object.keys(job.spec)) if (!known.spec.includes(key)) console.log(`spec.${key} is not known here`);
for (const key of Object.keys(job.spec.template.spec)) if (!known.pod.includes(key)) console.log(`spec.template.spec.${key} is not known here`);
// Shares, pods and completions are one number.
const shares = /\/(\d+)"/.exec(job.spec.template.spec.containers[0].args[0])?.[1];
if (new Set([String(job.spec.completions), String(job.spec.parallelism), shares]).size !== 1) console.log('completions, parallelism and shares differ');
if (!fault({ ...job, spec: { ...job.spec, completions: 'eight' } })) console.log('the schema takes a text for a number: nothing was checked');
