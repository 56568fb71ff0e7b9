/* Shows the contract; nothing is asked of any other host. */
window.SwaggerUIBundle({
  url: '/openapi.yaml',
  dom_id: '#reference',
  deepLinking: true,
  docExpansion: 'list',
  defaultModelsExpandDepth: -1,
  defaultModelExpandDepth: 3,
  tryItOutEnabled: true,
  syntaxHighlight: { activated: false },
  validatorUrl: null,
  queryConfigEnabled: false,
  persistAuthorization: false,
});
