// Puts a page of tables to work.
document.documentElement.classList.add('live');
for (const form of document.querySelectorAll('form.filter')) new Filter(form);
