/* Shows the contract; nothing is asked of any other host. */

import { keepInRepair } from './repairs.js';

/** The folder of the service, also where it stands below a path of a host. */
const HOME = new URL('..', import.meta.url).href.replace(/\/$/, '');

/** Operations are called where this page came from, and a summary holds no link inside its button. */
const plugin = ({ React }) => ({
  statePlugins: {
    spec: {
      wrapActions: {
        updateJsonSpec: (update) => (contract) => update({ ...contract, servers: [{ url: HOME }] }),
      },
    },
  },
  wrapComponents: {
    DeepLink: () => ({ text }) => React.createElement('span', {}, text),
    ServersContainer: () => () => null,
  },
});

window.SwaggerUIBundle({
  url: `${HOME}/openapi.yaml`,
  dom_id: '#reference',
  plugins: [plugin],
  deepLinking: true,
  docExpansion: 'list',
  defaultModelsExpandDepth: -1,
  defaultModelExpandDepth: 1,
  tryItOutEnabled: true,
  syntaxHighlight: { activated: false },
  validatorUrl: null,
  queryConfigEnabled: false,
  persistAuthorization: false,
});
keepInRepair(document.getElementById('reference'));
